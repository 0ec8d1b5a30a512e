import type { ChanceReport, PartCount, StateChance } from '../chance/report'
import type { HangerDocument } from '../hanger/document'
import { chanceBasisTexts, chanceSentence, leftOutText, outsideText } from '../words/chance'
import { inputName } from '../words/chanceNames'

export const CHANCE_FORMAT = 'strandwise-chance'
export const CHANCE_VERSION = 1

const stateJson = (state: StateChance): object =>
  ({ hangers: state.hangers, overloaded: state.overloaded, chance: state.chance, interval: state.interval, text: chanceSentence(state) })

const partJson = ({ link, tier, count, share }: PartCount): object => ({ link, tier, count, share })

/** What chance says of the hanger of one file by the contract "strandwise-chance" version 1: every key always there, SI, unrounded. */
export const chanceJson = (file: string, document: HangerDocument, report: ChanceReport): object => ({
  format: CHANCE_FORMAT,
  version: CHANCE_VERSION,
  file,
  name: document.name,
  samples: report.hangers,
  seed: report.frame.seed,
  atRest: stateJson(report.atRest),
  cases: report.cases.map((one) => ({ case: one.case, ...stateJson(one), fails: one.fails.map(partJson), nearest: one.nearest.map(partJson), use: one.use })),
  inputs: report.inputs.map((rank) => ({ ...rank, name: inputName(rank.input) })),
  watered: report.watered,
  checkedWeight: report.frame.checkedWeight,
  life: report.frame.life,
  slings: report.frame.slings,
  byModel: report.frame.byModel,
  leftOut: report.frame.leftOut.map((part) => ({ link: part.link, tier: part.tier, reason: part.reason, text: leftOutText(part) })),
  basis: chanceBasisTexts(report),
  outside: report.outside.map((code) => ({ code, text: outsideText(code) })),
})
