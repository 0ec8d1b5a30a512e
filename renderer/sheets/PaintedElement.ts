import { h, type FunctionalComponent, type VNode } from 'vue'
import type { PaintedElement as Painted } from '#core'

const nodeOf = ({ tag, attributes, children }: Painted): VNode =>
  h(tag, attributes, children.map((child) => (typeof child === 'string' ? child : nodeOf(child))))

/** A sheet as the core painted it, as elements of the page: texts stay texts, nothing is read as HTML. */
export const PaintedElement: FunctionalComponent<{ readonly painted: Painted }> = ({ painted }) => nodeOf(painted)
PaintedElement.props = ['painted']
