import css from './sheet.css?raw'

/** The one style of all sheets, as text, for whoever shows them elsewhere than in a file of their own. */
export const SHEET_STYLE: string = css
