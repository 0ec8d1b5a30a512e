import type { Fibre } from '../catalogue/cords'
import type { FrictionPair } from '../catalogue/frictionPairs'
import type { KnotCode } from '../catalogue/knotEfficiencies'
import type { BoardBase, BoardFixingKind } from '../catalogue/boardFixings'
import type { ConeKind } from '../catalogue/concrete'
import type { CatalogueSubject } from '../catalogue/entries'
import type { NATURAL_CORD_BREAKS } from '../catalogue/cordTests'
import type { Grade } from '../catalogue/basis'
import type { PlugBase } from '../catalogue/plugs'
import type { PartSpread, ROLL } from '../catalogue/scatter'
import type { Withdrawn } from '../catalogue/withdrawal'
import { FIELD_WORDS } from './fields'
import { WOOD_NAMES } from './woodNames'

export const SUBJECT_NAMES: Readonly<Record<CatalogueSubject, string>> = {
  pottingMixes: 'Potting mixes', fillings: 'Layers and dressings', potMaterials: 'Pots', vessels: 'Saucers and cover pots', plants: 'Plants',
  cords: 'Cord', soaking: 'Wet cord', weighing: 'Weighing', tenacities: 'Yarn and cord', cordTests: 'Cord tests', pullTests: 'Pull tests', ropeTables: 'Rope tables', knots: 'Knots', takeUp: 'Cord that knots take', knotEfficiencies: 'Knot tests', frictionPairs: 'Friction',
  metals: 'Metal', woods: 'Woods', sticks: 'Sticks and wooden rings', timber: 'Timber', screws: 'Screws', withdrawal: 'Pulled out of wood', lateral: 'Across the fastening', eurocodeScrews: 'Screws by Eurocode 5',
  places: 'Fixings and brackets', plugs: 'Plugs', boardFixings: 'Fixings in plasterboard', ceilings: 'Ceilings and walls', concrete: 'Concrete', chain: 'Chain', connectors: 'Hooks, rings and connectors',
  legs: 'Legs', seat: 'Seat of the pot', jolts: 'Jolts', wind: 'Wind and rain', testHang: 'Test hang',
  duration: 'Time', ageing: 'Ageing', reinspection: 'Looking again', reserves: 'Reserves', scatter: 'What differs by chance',
}

const FIBRES: Readonly<Record<Fibre, string>> = {
  cotton: 'cotton', linen: 'linen', hemp: 'hemp', jute: 'jute', manila: 'manila', sisal: 'sisal', polyester: 'polyester', polypropylene: 'polypropylene', nylon: 'nylon', viscose: 'viscose', unknown: 'unknown fibre',
}

const KNOTS: Readonly<Record<KnotCode, string>> = {
  overhand: 'overhand knot', square: 'square knot', figureEight: 'figure-eight knot', figureEightLoop: 'figure-eight loop', bowline: 'bowline',
  twoHalfHitches: 'two half hitches', anchorBend: 'anchor bend', cloveHitch: 'clove hitch', sheetBend: 'sheet bend', fishermansKnot: 'fisherman’s knot',
  carrickBend: 'carrick bend', timberHitch: 'timber hitch', sheepshank: 'sheepshank', eyeSplice: 'eye splice', shortSplice: 'short splice', larksHead: 'lark’s head',
}

const TESTERS: Readonly<Record<string, string>> = {
  handbook: 'handbook, natural rope', institute: 'cordage trade’s figures', synthetic: 'synthetic line', slick: 'slick synthetic line', vendor: 'vendor',
  onRing16: 'on a ring of 16 mm', onPost102: 'on a post of 102 mm', onThinBar: 'on a thin bar', onThickBar: 'on a thick bar', slingToSling: 'sling to sling',
}

const PAIRS: Readonly<Record<FrictionPair, string>> = {
  cottonOnCotton: 'cotton on cotton', nylonOnNylon: 'nylon on nylon', polyesterOnPolyester: 'polyester on polyester', viscoseOnViscose: 'viscose on viscose',
  rawCottonOnSteel: 'raw cotton on steel', scouredCottonOnSteel: 'scoured cotton on steel', oiledCottonOnSteel: 'scoured and oiled cotton on steel',
  nylonRopeOnPine: 'nylon rope on a pine roller', cottonYarnOnSteel: 'cotton yarn on hard steel', cottonYarnOnPorcelain: 'cotton yarn on porcelain', cottonYarnOnCeramic: 'cotton yarn on ceramic',
  hempOnRoughWood: 'hemp on rough wood', hempOnPolishedWood: 'hemp on polished wood', hempOnIron: 'hemp on iron',
}

const PLANT_SIZE_NAMES = Object.fromEntries(Object.entries(FIELD_WORDS['plant.size'].choices).filter(([code]) => code !== 'byPot'))

const NATURAL_CORDS: Readonly<Record<keyof typeof NATURAL_CORD_BREAKS, string>> = {
  cottonHollowBraid8: 'cotton, hollow braid, 8 mm', cottonTwisted4_8: 'cotton, three-strand, 4.8 mm (3/16 in)', cottonTwisted12_7: 'cotton, three-strand, 12.7 mm (1/2 in)',
  cottonSolidBraid4_8: 'cotton, solid braid, 4.8 mm (3/16 in)', cottonSolidBraid12_7: 'cotton, solid braid, 12.7 mm (1/2 in)',
  hempTwisted8: 'hemp, three-strand, 8 mm', hempFourStrand6: 'hemp, four-strand, 6 mm', hempFourStrand10: 'hemp, four-strand, 10 mm', hempFourStrand16: 'hemp, four-strand, 16 mm',
}

const WITHDRAWN: Readonly<Record<Withdrawn, string>> = { woodScrew: 'wood screw', lagScrew: 'lag screw', smoothNail: 'smooth nail', annularNail: 'ring-shank nail', driftPin: 'drift pin' }

const PLUG_BASES: Readonly<Record<PlugBase, string>> = { concrete: 'concrete', solidBrick: 'solid brick', perforatedBrick: 'perforated brick', aerated: 'aerated block', board: 'plasterboard of 12.5 mm' }

const BOARD_FIXINGS: Readonly<Record<BoardFixingKind, string>> = {
  toggleEighth: 'toggle of 1/8 in', toggleThreeSixteenths: 'toggle of 3/16 in', toggleQuarter: 'toggle of 1/4 in', sheetMetalScrew8: 'sheet-metal screw No. 8',
}
const BOARDS: Readonly<Record<BoardBase | 'board16', string>> = { board13: 'plasterboard of 12.7 mm', board13OnSteelStud: 'plasterboard of 12.7 mm on a steel stud', board16: 'plasterboard of 15.9 mm' }

const ROLLS: Readonly<Record<keyof typeof ROLL, string>> = { rated: 'rated cord', table: 'rope of a table', weighed: 'cord that was weighed', diameter: 'cord of known diameter only' }

const DRAWN_PARTS: Readonly<Record<PartSpread, string>> = {
  pulledOut: 'screw pulled out of timber', woodBent: 'wooden stick bent', woodSheared: 'wooden stick sheared', metal: 'metal wire or bar bent for good', pinInWood: 'pin bent in wood',
  rated: 'rated part', lowTable: 'plug or board fixing by a low figure', tested: 'part that held a test', other: 'any other part',
}

const CONES: Readonly<Record<ConeKind, string>> = {
  castIn: 'anchor cast in', postInstalled: 'anchor set later', crackedPostInstalled: 'anchor set later, cracked concrete', uncrackedPostInstalled: 'anchor set later, sound concrete',
  crackedHeaded: 'headed anchor, cracked concrete', uncrackedHeaded: 'headed anchor, sound concrete', crackedCube: 'anchor set later, cracked concrete, by cube strength', uncrackedCube: 'anchor set later, sound concrete, by cube strength',
}

const GRADES: Readonly<Record<Grade, string>> = {
  tested: 'tested', rated: 'rated by its maker', weighed: 'cord weighed', table: 'from a table', diameter: 'known by diameter only', model: 'reckoned from a model', fit: 'one length against another',
}

/** Words for the codes that may stand in the path of a catalogue entry, by kind of code. */
export const CATALOGUE_CODES = {
  fibre: FIBRES,
  spinning: { rotor: 'rotor-spun', ring: 'ring-spun' },
  pot: FIELD_WORDS['pot.material'].choices,
  mix: { ...FIELD_WORDS['mix.kind'].choices, unknown: 'unknown mix' },
  filling: FIELD_WORDS['layer.kind'].choices,
  plantSize: PLANT_SIZE_NAMES,
  timber: { ...FIELD_WORDS['place.timber'].choices, unknown: 'unknown timber' },
  fastening: WITHDRAWN,
  plugBase: PLUG_BASES,
  boardFixing: BOARD_FIXINGS,
  boardBase: BOARDS,
  pull: { pullOut: 'pulled straight out', shear: 'loaded down the wall' },
  market: { unitedKingdom: 'United Kingdom', australia: 'Australia' },
  cone: CONES,
  woodKind: { softwood: 'softwood', hardwood: 'hardwood' },
  woodOrOther: { ...WOOD_NAMES, other: 'other woods' },
  metal: { steel: 'steel', brass: 'brass', unknown: 'unknown metal' },
  roof: { indoors: 'indoors, dry', steamy: 'a steamy room' },
  beneath: FIELD_WORDS['place.beneath'].choices,
  wind: { sheltered: 'sheltered', open: 'in the open', exposed: 'exposed' },
  puller: { cat: 'a cat', child: 'a child' },
  drawnRoll: ROLLS,
  drawnPart: DRAWN_PARTS,
  grade: GRADES,
  knot: KNOTS,
  tester: TESTERS,
  pair: PAIRS,
  motion: { atRest: 'at rest', sliding: 'sliding' },
  wood: WOOD_NAMES,
  cord: NATURAL_CORDS,
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>

export type CodeKind = keyof typeof CATALOGUE_CODES
