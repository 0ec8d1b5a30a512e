import { CATALOGUE_CORDS } from '../catalogue/cords'
import { USUAL_DOWELS } from '../catalogue/sticks'
import { WINDS } from '../catalogue/wind'
import type { CheckResult } from '../check/checkHanger'
import type { LinkCode } from '../check/linkResult'
import { morePanelCords, morePanelStrands, widerPanel } from './panelRemedies'
import { hasStick } from '../hanger/arrangement'
import type { Patch } from '../hanger/document'
import { formatSi } from '../quantity/formatSi'
import { STANDARD_GRAVITY } from '../quantity/si'

export const REMEDY_CODES = [
  'drillHole', 'higherRating', 'moreWraps', 'testHang', 'pullInPlace', 'closedEye', 'thickerHook', 'shorterHook', 'deeperScrew', 'useJoist', 'steelRing', 'thickerRing', 'replaceSooner',
  'lighterMix', 'lighterPot', 'smallerPot', 'netCradle', 'otherPlace', 'thickerCord', 'padEdge', 'wholeStrands', 'moreStrands', 'plainLegs', 'moreLegs', 'panelStrands', 'panelCords', 'widerPanel', 'longerHanger', 'smallestCord',
  'longerTopCord', 'moreTopStrands', 'thickerStick', 'ratedConnector', 'outOfReach', 'outOfWind',
] as const
export type RemedyCode = (typeof REMEDY_CODES)[number]

/** One kind of remedy: which links it can help, when it can still be done, and patches of rising strength. */
export interface RemedyKind {
  readonly code: RemedyCode
  /** Links whose trouble it can mend. */
  readonly helps: readonly LinkCode[]
  /** Only while the hanger is planned. */
  readonly plannedOnly: boolean
  /** Cheaper first: 1 a few minutes, 2 a small purchase, 3 another pot or place, 4 knot it anew. */
  readonly cost: 1 | 2 | 3 | 4
  readonly patches: (check: CheckResult) => readonly Patch[]
}

const ALL_LOADED: readonly LinkCode[] = ['fixing', 'bracket', 'pin', 'hook', 'hookShank', 'connector', 'topCord', 'stick', 'ringCord', 'ring', 'leg', 'gatheringTurn', 'wrapHoop', 'gatheringGrip', 'seat']
const CORD: readonly LinkCode[] = ['ringCord', 'leg', 'gatheringTurn', 'wrapHoop']
const mm = (value: number): string => formatSi(value, 'mm')
/** Finer than this nobody ties a row of knots, m. */
const ROW_STEP = 0.005
const kgUp = (value: number): string => `${Math.ceil(value * 10) / 10} kg`

/** All kinds of remedies. Each proposes changes to the hanger file; whether they help is found by checking. */
export const REMEDY_KINDS: readonly RemedyKind[] = [
  { code: 'drillHole', helps: ALL_LOADED, plannedOnly: false, cost: 1, patches: ({ solved: { hanger: { answers } } }) => (answers['pot.drainage'] === 'hole' ? [] : [{ 'pot.drainage': 'hole' }]) },
  {
    code: 'moreWraps', helps: ['gatheringGrip'], plannedOnly: false, cost: 1,
    patches: ({ solved: { hanger: { answers } } }) => [4, 8, 12].map((more) => ({ 'gathering.wraps': String(Math.min(40, answers['gathering.wraps'] + more)) })),
  },
  {
    code: 'testHang', helps: ['gatheringGrip', 'ring', 'stick', 'connector'], plannedOnly: false, cost: 1,
    patches: ({ links, solved: { geometry: { path } } }) => {
      const asked = links.flatMap((l) => l.findings).flatMap((f) => (f.code === 'GRIP_UNTESTED' || f.code === 'RING_UNRATED' || f.code === 'RING_LEVEL_UNTESTED' || f.code === 'STICK_UNRATED' || f.code === 'CONNECTOR_UNRATED' ? [f.testMass] : []))
      return asked.length > 0 && path.ok ? [1, 1.25, 1.5].map((more) => ({ 'testHang.mass': kgUp(Math.max(...asked) * more), 'testHang.time': '24 h', 'testHang.slip': '1 mm' })) : []
    },
  },
  {
    code: 'pullInPlace', helps: ['fixing'], plannedOnly: false, cost: 1,
    patches: ({ links }) => {
      const asked = links.flatMap((l) => l.findings).flatMap((f) => (f.code === 'PULL_IN_PLACE' ? [f.mass] : f.code === 'RAIL_NEEDS_RATING' || f.code === 'BRANCH_UNTESTED' ? [f.testMass] : []))
      return asked.length === 0 ? [] : [{ 'fixing.proof': kgUp(Math.max(...asked)) }]
    },
  },
  { code: 'closedEye', helps: ['hook'], plannedOnly: false, cost: 2, patches: ({ solved: { hanger: { answers } } }) => (answers['hook.kind'] === 'open' ? [{ 'hook.kind': 'latched' }, { 'hook.kind': 'closed' }] : []) },
  {
    code: 'thickerHook', helps: ['hook', 'hookShank', 'pin', 'fixing'], plannedOnly: false, cost: 2,
    patches: ({ solved: { hanger: { answers } } }) =>
      (answers['hook.rated'] === null ? [1, 2, 3, 4, 6, 8] : []).map((more) => ({ 'hook.wire': mm(answers['hook.wire'] + more / 1000) })),
  },
  {
    code: 'shorterHook', helps: ['hookShank', 'pin'], plannedOnly: false, cost: 1,
    patches: ({ solved: { hanger: { answers } } }) => [0.75, 0.5].map((share) => ({ 'hook.projection': mm(Math.ceil(answers['hook.projection'] * share * 1000) / 1000) })),
  },
  {
    code: 'deeperScrew', helps: ['fixing'], plannedOnly: false, cost: 2,
    patches: ({ solved: { hanger: { answers } } }) => (answers['place.substrate'] === 'timber' ? [10, 20, 30, 40] : []).map((more) => ({ 'fixing.penetration': mm(answers['fixing.penetration'] + more / 1000) })),
  },
  { code: 'useJoist', helps: ['fixing'], plannedOnly: false, cost: 2, patches: ({ solved: { hanger: { answers } } }) => (answers['place.substrate'] === 'timber' || answers['place.support'] === 'overBeam' ? [] : [{ 'place.substrate': 'timber' }]) },
  {
    code: 'higherRating', helps: ['fixing', 'hook', 'connector', 'ring'], plannedOnly: false, cost: 2,
    patches: ({ solved: { hanger: { answers } }, governing }) => {
      const path = governing?.link === 'fixing' || governing?.link === 'connector' || governing?.link === 'ring' ? (`${governing.link}.rated` as const) : 'hook.rated'
      const rated = answers[path]
      return rated === null ? [] : [1.25, 1.5, 2, 3, 4].map((more): Patch => ({ [path]: `${Math.ceil((rated * more) / STANDARD_GRAVITY)} kgf` }))
    },
  },
  { code: 'steelRing', helps: ['ring'], plannedOnly: true, cost: 2, patches: ({ solved: { hanger: { answers } } }) => (answers['ring.metal'] === 'steel' ? [] : [{ 'ring.metal': 'steel' }]) },
  {
    code: 'thickerRing', helps: ['ring'], plannedOnly: true, cost: 2,
    patches: ({ solved: { hanger: { answers } } }) => (answers['ring.rated'] === null && answers['ring.metal'] !== 'wood' ? [1, 2, 3, 4] : []).map((more) => ({ 'ring.wire': mm(answers['ring.wire'] + more / 1000) })),
  },
  {
    code: 'longerTopCord', helps: ['topCord', 'stick'], plannedOnly: false, cost: 1,
    patches: ({ solved: { hanger: { answers } } }) => (hasStick(answers) && answers['stick.held'] === 'topCord' ? [1.5, 2, 3] : [])
      .map((share) => share * answers['stick.span']).filter((length) => length > answers['stick.topCord']).map((length) => ({ 'stick.topCord': mm(length) })),
  },
  {
    code: 'moreTopStrands', helps: ['topCord'], plannedOnly: false, cost: 1,
    patches: ({ solved: { hanger: { answers } } }) => [1, 2, 4, 8].map((more) => ({ 'stick.topStrands': String(Math.min(24, answers['stick.topStrands'] + more)) })),
  },
  {
    code: 'thickerStick', helps: ['stick'], plannedOnly: true, cost: 2,
    patches: ({ solved: { hanger: { answers } } }) => USUAL_DOWELS.map((dowel) => dowel.diameter.value).filter((d) => d > answers['stick.diameter'] * (1 + 1e-9)).map((d) => ({ 'stick.diameter': mm(d) })),
  },
  {
    code: 'ratedConnector', helps: ['connector'], plannedOnly: false, cost: 2,
    patches: ({ links }) => {
      const between = links.filter((l) => l.link === 'connector')
      const most = Math.max(...between.flatMap((l) => (l.demand === null ? [] : [l.demand.value])))
      return between.some((l) => l.part === 'rated') || !Number.isFinite(most) ? [] : [1, 2, 4].map((more) => ({ 'connector.kind': 'carabiner', 'connector.rated': `${Math.ceil((most * more) / STANDARD_GRAVITY)} kgf` }))
    },
  },
  { code: 'replaceSooner', helps: [...CORD, 'topCord'], plannedOnly: false, cost: 1, patches: ({ solved: { hanger: { answers } } }) => ['2 years', '1 year'].filter((_, i) => answers['place.life'] > (2 - i) * 366 * 86400).map((life) => ({ 'place.life': life })) },
  { code: 'lighterMix', helps: ALL_LOADED, plannedOnly: false, cost: 3, patches: ({ solved: { hanger: { answers } } }) => (answers['weighed.mass'] === null && answers['mix.kind'] !== 'peatPerlite' ? [{ 'mix.kind': 'peatPerlite' }] : []) },
  { code: 'lighterPot', helps: ALL_LOADED, plannedOnly: false, cost: 3, patches: ({ solved: { hanger: { answers } } }) => (answers['weighed.mass'] === null && answers['pot.emptyMass'] === null && answers['pot.material'] !== 'plastic' ? [{ 'pot.material': 'plastic' }] : []) },
  {
    code: 'smallerPot', helps: ALL_LOADED, plannedOnly: false, cost: 3,
    patches: ({ solved: { hanger: { answers } } }) => (answers['weighed.mass'] === null && answers['pot.emptyMass'] === null ? [0.8, 0.65] : []).map((share) => ({
      'pot.rim': mm(answers['pot.rim'] * share), 'pot.height': mm(answers['pot.height'] * share), 'pot.base': mm(answers['pot.base'] * share),
      ...(answers['pot.shape'] === 'bellied' ? { 'pot.belly': mm(answers['pot.belly'] * share), 'pot.bellyHeight': mm(answers['pot.bellyHeight'] * share) } : {}),
      ...(answers['pot.shape'] === 'trough' ? { 'pot.length': mm(answers['pot.length'] * share) } : {}),
    })),
  },
  {
    code: 'netCradle', helps: ['cradle', 'seat'], plannedOnly: true, cost: 4,
    patches: ({ solved: { geometry: { path, onSide: { from, to } } } }) => (path.ok ? [{ 'cradle.kind': 'net', 'cradle.first': mm(Math.round((from + to) / 2 / ROW_STEP) * ROW_STEP) }] : []),
  },
  {
    code: 'otherPlace', helps: ALL_LOADED, plannedOnly: false, cost: 3,
    patches: ({ solved: { hanger: { answers } } }) => (answers['place.beneath'] === 'nothing' ? [] : answers['place.beneath'] === 'furniture' || answers['place.beneath'] === 'wayThrough' ? [{ 'place.beneath': 'nothing' }] : [{ 'place.beneath': 'furniture' }, { 'place.beneath': 'nothing' }]),
  },
  { code: 'outOfReach', helps: ALL_LOADED, plannedOnly: false, cost: 1, patches: ({ solved: { wholeCases } }) => (wholeCases.includes('tug') ? [{ 'place.reach': 'nobody' }] : []) },
  {
    code: 'outOfWind', helps: [...ALL_LOADED, 'load'], plannedOnly: false, cost: 3,
    patches: ({ solved: { hanger: { answers }, gust } }) => (gust === null ? [] : WINDS.slice(0, WINDS.indexOf(answers['place.wind'])).reverse().map((wind): Patch => ({ 'place.wind': wind }))),
  },
  {
    code: 'thickerCord', helps: [...CORD, 'topCord'], plannedOnly: true, cost: 4,
    patches: ({ solved: { hanger: { answers } } }) => {
      const diameter = answers['cord.diameter']
      if (diameter === null || answers['cord.rated'] !== null) return []
      const perMetre = answers['cord.linearDensity']
      const piece = answers['cord.weighedMass']
      return CATALOGUE_CORDS.filter((c) => c.diameter > diameter + 1e-6).slice(0, 5).map((c): Patch => ({
        'cord.diameter': mm(c.diameter),
        // The same cord thicker: grams per metre go with the square of the diameter.
        ...(perMetre === null ? {} : { 'cord.linearDensity': formatSi(perMetre * (c.diameter / diameter) ** 2, 'g/m') }),
        ...(piece === null ? {} : { 'cord.weighedMass': formatSi(piece * (c.diameter / diameter) ** 2, 'g') }),
      }))
    },
  },
  {
    code: 'moreStrands', helps: CORD, plannedOnly: true, cost: 4,
    patches: ({ solved: { hanger: { answers } } }) => [2, 4, 8].map((more): Patch => {
      const strands = Math.min(48, answers['make.strands'] + more)
      const fillers = answers['make.fillers']
      // Of told filler cords the same share carries on.
      return { 'make.strands': String(strands), ...(fillers === null ? {} : { 'make.fillers': String(Math.floor((fillers * strands) / answers['make.strands'])) }) }
    }),
  },
  { code: 'padEdge', helps: ['leg'], plannedOnly: false, cost: 1, patches: ({ solved: { hanger: { answers } } }) => (answers['pot.edge'] === 'sharp' ? [{ 'pot.edge': 'rounded' }] : []) },
  { code: 'wholeStrands', helps: ['leg'], plannedOnly: true, cost: 4, patches: ({ solved: { hanger: { answers } } }) => (answers['make.joined'] === 'no' ? [] : [{ 'make.joined': 'no' }]) },
  { code: 'plainLegs', helps: CORD, plannedOnly: true, cost: 4, patches: ({ solved: { hanger: { answers } } }) => (answers['make.build'] === 'plain' ? [] : [{ 'make.build': 'plain' }]) },
  { code: 'moreLegs', helps: [...CORD, 'seat'], plannedOnly: true, cost: 4, patches: ({ solved: { hanger: { answers } } }) => [1, 2, 4].map((more) => ({ 'make.legs': String(Math.min(12, answers['make.legs'] + more)) })) },
  { code: 'panelStrands', helps: ['leg', 'gatheringTurn'], plannedOnly: true, cost: 4, patches: morePanelStrands },
  { code: 'panelCords', helps: ['leg'], plannedOnly: true, cost: 4, patches: morePanelCords },
  { code: 'widerPanel', helps: ['leg'], plannedOnly: true, cost: 4, patches: widerPanel },
  {
    code: 'longerHanger', helps: [...CORD, 'gatheringGrip'], plannedOnly: true, cost: 4,
    patches: ({ solved: { hanger: { answers } } }) => {
      const leg = answers['make.legLength']
      return [1.25, 1.5, 2].map((more): Patch => (leg === null ? { 'make.totalLength': mm(answers['make.totalLength'] * more) } : { 'make.legLength': mm(leg * more) }))
    },
  },
]
