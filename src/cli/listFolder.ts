/** How the command line looks into a folder: paths of the hanger files in it, by name; null where the path is no folder. */
export type ListFolder = (path: string) => readonly string[] | null
