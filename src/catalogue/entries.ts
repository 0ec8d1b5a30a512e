import * as ageing from './ageing'
import * as boardFixings from './boardFixings'
import * as ceilings from './ceilings'
import * as chain from './chain'
import * as concrete from './concrete'
import * as connectors from './connectors'
import * as cords from './cords'
import * as cordTests from './cordTests'
import * as duration from './duration'
import * as eurocodeScrews from './eurocodeScrews'
import * as fillings from './fillings'
import * as frictionPairs from './frictionPairs'
import * as jolts from './jolts'
import * as knotEfficiencies from './knotEfficiencies'
import * as knots from './knots'
import * as lateral from './lateral'
import * as legs from './legs'
import * as metals from './metals'
import * as places from './places'
import * as plants from './plants'
import * as plugs from './plugs'
import * as potMaterials from './potMaterials'
import * as pottingMixes from './pottingMixes'
import * as pullTests from './pullTests'
import * as reinspection from './reinspection'
import * as reserves from './reserves'
import * as ropeTables from './ropeTables'
import * as scatter from './scatter'
import * as screws from './screws'
import * as seat from './seat'
import * as soaking from './soaking'
import * as sticks from './sticks'
import * as takeUp from './takeUp'
import * as tenacities from './tenacities'
import * as testHang from './testHang'
import * as timber from './timber'
import * as vessels from './vessels'
import * as weighing from './weighing'
import * as wind from './wind'
import * as withdrawal from './withdrawal'
import * as woods from './woods'
import { collectEntries, type CatalogueEntry } from './collectEntries'

/** The modules that hold values, in the order in which they are listed. */
const MODULES = {
  pottingMixes, fillings, potMaterials, vessels, plants,
  cords, tenacities, soaking, weighing, cordTests, pullTests, ropeTables, knots, takeUp, knotEfficiencies, frictionPairs,
  metals, woods, sticks, timber, screws, withdrawal, lateral, eurocodeScrews,
  places, plugs, boardFixings, ceilings, concrete, chain, connectors,
  legs, seat, jolts, wind, testHang,
  duration, ageing, reinspection, reserves, scatter,
} as const

export type CatalogueSubject = keyof typeof MODULES

/** The whole catalogue, value by value, collected from the modules that the check itself reads. */
export function catalogueEntries(): readonly CatalogueEntry<CatalogueSubject>[] {
  return (Object.keys(MODULES) as CatalogueSubject[]).flatMap((subject) => collectEntries(subject, MODULES[subject]))
}
