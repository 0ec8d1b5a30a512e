/** The drawing in words: what a situation does to the hanger, and all of it for whoever cannot see it. Lengths, forces, speeds and angles come as texts. */
export const PICTURED = {
  trouble: {
    unstable: 'The pot does not rest upright; it is drawn as it was hung.',
    lostSupport: 'Fewer than three legs carry: the pot is not held, wherever it is drawn.',
    notConverged: 'Where it comes to rest could not be found; it is drawn as it was hung.',
  },
  nothingHangs: 'The legs are too short to close under the pot: nothing hangs.',
  onlyWhatCarries: 'Only what carries is drawn.',
  tilts: (angle: string) => `The pot tilts ${angle}.`,
  swings: 'It swings 30° to each side of where it is drawn.',
  swingsIn: (seconds: string) => `It swings 30° to each side of where it is drawn, there and back in ${seconds} s.`,
  gust: (speed: string, force: string, watered: string, dry: string, swing: string) =>
    `Gusts of ${speed} push with ${force}: it leans ${watered} just watered, ${dry} dry, and may swing to ${swing}. It is drawn hanging plumb.`,
  cat: (force: string) => `A cat pulls with ${force}, straight down or a little to one side. It is drawn hanging plumb.`,
  child: (force: string) => `A child pulls with ${force}, straight down or a little to one side. It is drawn hanging plumb.`,
  strandGone: 'The strand that has gone is on leg 1.',
  legGone: (number: number) => `Leg ${number} is gone and is not drawn.`,
  legsSlack: (numbers: readonly number[]) => (numbers.length === 1 ? `Leg ${numbers.join('')} hangs slack.` : `Legs ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1) ?? ''} hang slack.`),

  pot: (rim: string, base: string, height: string) => `The pot is ${rim} wide at the rim, ${base} at its base and ${height} high.`,
  trough: (rim: string, length: string, base: string, height: string) => `The pot is ${rim} wide and ${length} long at the rim, ${base} at its base and ${height} high.`,
  hangFrom: { levelRing: 'from a level ring', ring: 'from a ring', bunched: 'from the hook', stick: 'from a stick' },
  legs: (count: string, from: string, angle: string, leave: string) => `${count} legs hang ${from}, ${angle} from the vertical, and leave the pot ${leave} above its base.`,
  unlikeLegs: (count: string, from: string, angle: string, leave: string) => `${count} legs hang ${from}, up to ${angle} from the vertical, and leave the pot ${leave} above its base.`,
  hangingPoint: (height: string) => `The hanging point is ${height} above the base.`,
  drop: (length: string) => `From hook to end of fringe it measures ${length}.`,
  panel: (width: string, height: string, rise: string) => `A knotted panel ${width} wide and ${height} high hangs from a stick and ends ${rise} above the rim.`,
  panelOnWall: (width: string, height: string, rise: string) => `Before a wall a knotted panel ${width} wide and ${height} high hangs from a stick and ends ${rise} above the rim.`,
  panelStrands: (front: string, angle: string, leave: string, behind: string) =>
    `${front} strands from each corner run round the front, ${angle} from the vertical, and come to the pot ${leave} above its base; ${behind} run down behind it.`,
} as const
