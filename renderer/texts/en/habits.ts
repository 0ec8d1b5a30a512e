/** How the maker likes numbers and the window. */
export const HABITS = {} as const
