/** The list of the maker's own hangers. */
export const HANGERS = {
  title: 'My hangers',
  titleWithFolder: 'My hangers in {folder}',
  list: 'Hangers in this folder',
  chooseFolder: 'Choose folder…',
  find: 'Find by name, tag code or lot',
  more: 'Show more',
  unchecked: 'Not checked yet.',
  open: 'Open',
  openNamed: (name: string) => `Open ${name}`,
} as const
