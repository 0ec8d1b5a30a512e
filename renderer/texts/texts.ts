import { ASSUMED } from './en/assumed'
import { CARD } from './en/card'
import { CARE } from './en/care'
import { CHARTS } from './en/charts'
import { CATALOGUE } from './en/catalogue'
import { CHANCE } from './en/chance'
import { CHOOSING } from './en/choosing'
import { COMPARE } from './en/compare'
import { DIALOGS } from './en/dialogs'
import { DRAWING } from './en/drawing'
import { FAULTS } from './en/faults'
import { FILES } from './en/files'
import { FORM } from './en/form'
import { GUIDES } from './en/guides'
import { HABITS } from './en/habits'
import { HANGERS } from './en/hangers'
import { HELP } from './en/help'
import { MAPS } from './en/maps'
import { PAGE } from './en/page'
import { PICTURED } from './en/pictured'
import { PLACE } from './en/place'
import { QUESTIONS } from './en/questions'
import { SHEETS } from './en/sheets'
import { SHELF } from './en/shelf'
import { SITUATIONS } from './en/situations'
import { STRENGTH } from './en/strength'
import { VERDICT } from './en/verdict'
import { WEIGHT } from './en/weight'

const EN = {
  assumed: ASSUMED,
  card: CARD,
  care: CARE,
  charts: CHARTS,
  catalogue: CATALOGUE,
  chance: CHANCE,
  choosing: CHOOSING,
  compare: COMPARE,
  dialogs: DIALOGS,
  drawing: DRAWING,
  faults: FAULTS,
  files: FILES,
  form: FORM,
  guides: GUIDES,
  habits: HABITS,
  hangers: HANGERS,
  help: HELP,
  maps: MAPS,
  page: PAGE,
  pictured: PICTURED,
  place: PLACE,
  questions: QUESTIONS,
  sheets: SHEETS,
  shelf: SHELF,
  situations: SITUATIONS,
  strength: STRENGTH,
  verdict: VERDICT,
  weight: WEIGHT,
} as const

/** The same entries in any words: a text is a text, whatever it says in English. */
type InAnyWords<Entry> =
  Entry extends string ? string
    : Entry extends readonly string[] ? readonly string[]
      : Entry extends (...values: infer Values) => infer Said ? (...values: Values) => InAnyWords<Said>
        : { readonly [Key in keyof Entry]: InAnyWords<Entry[Key]> }

/** Another language gives the same keys. */
export type Texts = InAnyWords<typeof EN>

/**
 * The window's one catalogue of messages, by area: a text, or a function of the values it tells. Sentences
 * about a hanger are the core's own, in `src/words`.
 */
export const texts: Texts = EN
