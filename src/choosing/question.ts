import type { LinkCode } from '../check/linkResult'

/** What can be chosen, in the order it is told while a hanger is planned; the many cords last. */
export const CHOICES = ['strands', 'legs', 'shortestLeg', 'longestLeg', 'stick', 'wraps', 'fixing', 'heaviestPot', 'largestRim', 'cord'] as const
export type ChoiceCode = (typeof CHOICES)[number]

const CORD: readonly LinkCode[] = ['ringCord', 'leg', 'gatheringTurn', 'wrapHoop']
const LEGS: readonly LinkCode[] = ['ringCord', 'leg', 'cradle', 'seat', 'gatheringTurn', 'wrapHoop']

/** Links that a choice decides: these must hold or just hold, and no other may get a worse verdict than it has now. */
export const DECIDES: Readonly<Record<Exclude<ChoiceCode, 'heaviestPot' | 'largestRim'>, readonly LinkCode[]>> = {
  cord: [...CORD, 'topCord'],
  strands: CORD,
  legs: LEGS,
  shortestLeg: LEGS,
  longestLeg: LEGS,
  stick: ['stick'],
  wraps: ['gatheringGrip'],
  fixing: ['fixing', 'bracket', 'pin', 'hook', 'hookShank'],
}

/** What can still be changed on a hanger that is knotted: the rest is for the next one. */
const STILL_OPEN: readonly ChoiceCode[] = ['wraps', 'fixing', 'heaviestPot', 'largestRim']

export const isForNext = (choice: ChoiceCode, isMade: boolean): boolean => isMade && !STILL_OPEN.includes(choice)

/** Choices in the order they are told: of a made hanger first those that can still be changed. */
export const inOrder = (choices: readonly ChoiceCode[], isMade: boolean): readonly ChoiceCode[] =>
  CHOICES.filter((choice) => choices.includes(choice)).toSorted((a, b) => Number(isForNext(a, isMade)) - Number(isForNext(b, isMade)))
