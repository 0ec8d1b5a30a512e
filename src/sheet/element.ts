/** An element of a page as plain data: HTML, and SVG within it. A child that is a text stands for itself, not escaped. */
export interface Element {
  readonly tag: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly (Element | string)[]
}

/** An element with its attributes and children. */
export const element = (tag: string, attributes: Element['attributes'], ...children: Element['children']): Element => ({ tag, attributes, children })
