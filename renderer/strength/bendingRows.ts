import { forceText, lengthText, percentText, type LinkDiagram } from '#core'
import { between } from './bendingScale'

/** Places nearer to each other than this are one, m. */
const SAME = 1e-6

/** A bar where it is held, pulled and bent hardest: pull there, how far it is bent of the most, and how far out of line. */
export function bendingRows({ at, moment, sag, held, pulls }: LinkDiagram, words: { readonly held: string, readonly notKnown: string }): readonly (readonly string[])[] {
  const most = Math.max(...moment.map(Math.abs))
  const hardest = at[moment.findIndex((m) => Math.abs(m) === most)] ?? 0
  const places = [...held, ...pulls.map((pull) => pull.at), hardest, at.at(-1) ?? 0].sort((a, b) => a - b)
  return places.filter((place, i) => i === 0 || place - (places[i - 1] ?? 0) > SAME).map((place) => {
    const pull = pulls.filter((one) => Math.abs(one.at - place) <= SAME).reduce((sum, one) => sum + one.force, 0)
    const isHeld = held.some((one) => Math.abs(one - place) <= SAME)
    const bent = Math.abs(between(at, moment, place))
    return [
      lengthText(place),
      [...(isHeld ? [words.held] : []), ...(pull > 0 ? [forceText(pull)] : [])].join(', ') || '–',
      percentText(most > 0 ? bent / most : 0),
      sag === null ? words.notKnown : lengthText(Math.abs(between(at, sag, place))),
    ]
  })
}
