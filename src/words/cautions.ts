import type { Caution } from '../check/cautions'

export const CAUTION_TEXTS: Readonly<Record<Caution, string>> = {
  aidNotCertificate: 'This is an aid to judgement, not a certificate.',
  localCodes: 'Local building codes and licensed practice come first.',
  askLicensed: 'If you are not sure of the ceiling, the wall or the age of the house, ask someone licensed.',
  hiddenServices: 'Before drilling, think of pipes and cables, and in older houses of asbestos and lead paint.',
  testHang: 'Hang it for 24 h over a cushion first, and pull the fixing in place with one and a half times the load before the pot goes up.',
  notOverBed: 'Nothing over a bed, a cot or a seat without the stricter reserve and a second tie.',
  secondTie: 'People are beneath: add a second, independent tie from the ring to the building.',
  children: 'Keep loops and fringe out of children’s and pets’ reach.',
  headroom: 'Keep it above head height where people walk, stand up or open a door.',
  exits: 'Keep it clear of ways out, doors and their signs, also when it swings.',
  heat: 'Keep it clear of sprinklers, heaters, lamps and candles.',
  sockets: 'Water runs down: no socket, switch or lamp beneath it or on the wall behind it.',
  drips: 'What drips makes the floor slippery: water it over a saucer, or take it down to water it.',
  takeDown: 'Take it down when wraps go slack or cord is frayed, thinned, stained or stretched.',
  recheck: 'Look at every knot and at the fixing as often as is said under its care, and replace it on its date.',
  notForPeople: 'Never for people, swings or hammocks.',
}
