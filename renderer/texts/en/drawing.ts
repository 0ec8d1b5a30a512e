/** Around the drawing: its views, tools, captions and tables. */
export const DRAWING = {} as const
