import sample from './demos/class-sample-with-pull-tests.strandwise?raw'
import fern from './demos/fern-over-the-sideboard.strandwise?raw'
import glazed from './demos/glazed-pot-by-the-reading-chair.strandwise?raw'
import herbs from './demos/herbs-in-a-row.strandwise?raw'
import ivy from './demos/ivy-on-a-bracket-in-a-stairwell.strandwise?raw'
import order from './demos/order-for-a-rented-flat.strandwise?raw'
import tiers from './demos/two-tiers-at-the-landing-window.strandwise?raw'
import spider from './demos/spider-plant-on-the-study-wall.strandwise?raw'

/** Demo hangers of invented scenarios, as the text of hanger files; read by the same reader as any file. */
export const DEMOS: readonly { readonly file: string; readonly title: string; readonly text: string }[] = [
  { file: 'fern-over-the-sideboard.strandwise', title: 'Fern over the sideboard: it holds', text: fern },
  { file: 'glazed-pot-by-the-reading-chair.strandwise', title: 'Glazed pot by the reading chair: it fails, and can be mended', text: glazed },
  { file: 'order-for-a-rented-flat.strandwise', title: 'Order for a rented flat: not enough is known', text: order },
  { file: 'class-sample-with-pull-tests.strandwise', title: 'Class sample from a tested roll: it just holds', text: sample },
  { file: 'ivy-on-a-bracket-in-a-stairwell.strandwise', title: 'Ivy on a bracket in a stairwell: as a customer told it', text: ivy },
  { file: 'herbs-in-a-row.strandwise', title: 'Herbs in a row over the kitchen counter: they hold', text: herbs },
  { file: 'spider-plant-on-the-study-wall.strandwise', title: 'Spider plant on the study wall: it just holds', text: spider },
  { file: 'two-tiers-at-the-landing-window.strandwise', title: 'Two tiers at the landing window: they hold', text: tiers },
]
