/** What is wrong with a text that a maker reads; empty where nothing is. */
export function faultsOf(text: string): readonly string[] {
  const faults: string[] = []
  const say = (fault: string, found: RegExpMatchArray | null): void => { if (found) faults.push(`${fault}: ${found[0]}`) }
  say('not a value', text.match(/undefined|NaN|null|Infinity|\[object|=>/))
  say('a name from the code', text.match(/\b[a-z]{2,}[A-Z][a-z]+\b|\b[A-Z]+_[A-Z_]+\b|\$\{/))
  say('more digits than anybody measured', text.match(/\d\.\d{4,}/))
  say('blanks', text.match(/ {2}|^ | $| [.,;:?]/))
  say('marks side by side', text.match(/[.,;:?!]{2}|\? [a-z]/))
  say('a minus in front of a length or mass', text.match(/(^|\s|\()-\d/))
  return faults
}

/** As above, for a whole sentence: a capital, a figure or an opening quote first, a full stop last. */
export const sentenceFaultsOf = (text: string): readonly string[] => [
  ...faultsOf(text),
  ...(/^[A-Z0-9“]/.test(text) ? [] : ['does not begin like a sentence']),
  ...(/[.!]$/.test(text) ? [] : ['does not end like a sentence']),
]
