/** The guided pages: measuring, weighing, pull test, test hang. */
export const GUIDES = {} as const
