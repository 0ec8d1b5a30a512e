import type { GuideNumbers } from '../../guides/guideNumbers'

/** What the guided pages say, step by step: first what is needed, then what makes it safe, what to do and what to write down. */
export const STEPS = {
  weighing: {
    need: { title: 'What you need', lines: () => [
      'A kitchen scale does for a small pot, a luggage or bathroom scale for a large one.',
      'A board or tub to set it on, if the pot is wider than the scale.',
      'One weighing takes the place of all questions about pot, mix and plant.',
    ] },
    ready: { title: 'Make it ready', lines: () => [
      'The wettest weighing is worth most, for that is what must hold. Water until it runs out below and wait until it has stopped dripping: that is “just watered”.',
      'A pot without a hole: weigh it with water standing on the mix.',
      'Take off the saucer and answer for it by itself.',
      'Lift with straight back and bent knees; a large wet pot is for two.',
    ] },
    doing: { title: 'Weigh it', lines: () => [
      'Kitchen scale: set it to nothing with the board or tub on it, or note what those weigh.',
      'Luggage scale: hang the pot from it in its hanger or a strong bag, low over the floor, and note what hanger or bag weighs.',
      'Bathroom scale: stand on it with the pot, then without. The pot is the difference; do it twice, for it may be half a kilogram out.',
    ] },
    writing: { title: 'Write it down', lines: () => ['What the scale showed, how wet the pot was, and what stood on the scale besides and will not hang.'] },
    changed: { title: 'What it changes', lines: () => [] },
  },
  pullTest: {
    need: { title: 'What you need', lines: ({ pulls }: GuideNumbers) => [
      `${pulls} strands or more from the roll you tie with, each long enough for its knots. Note the roll.`,
      'A luggage scale that keeps its highest reading; or an empty bucket, a jug to fill it, and something firm to hang it from.',
      'Glasses, and a clock that shows seconds.',
    ] },
    ready: { title: 'Safety first', lines: () => [
      'Wear glasses. When cord parts, both ends fly.',
      'Hang the bucket so low that it can fall no further than a hand is wide. Nothing that can break and no feet lie beneath.',
      'Stand to the side, never beneath the load nor in line with the cord. Children and animals are out of the room.',
      'Hang it from something much stronger than the strand, such as a beam or a bar over a door frame; not from the hook your hangers hang from.',
    ] },
    doing: { title: 'Pull', lines: () => [
      'Tie each strand as it is tied in the hanger: lark’s head on the real ring at one end, a few of its knots, the gathering knot at the other. A strand pulled straight tells less.',
      'Draw up gently without a jerk, or fill the bucket slowly, until it breaks. Weigh bucket and water together then.',
      'Note the seconds from the first pull to the break.',
      'If the pot drips on its cords, soak as many more strands for an hour and pull them wet.',
      'Throw tested cord away: what was pulled hard is weaker, though it may not show.',
    ] },
    writing: { title: 'Write it down', lines: () => ['Every pull, the poor ones first of all. One that you stopped before the break counts as if it broke there.'] },
    changed: { title: 'What it changes', lines: () => [] },
  },
  testHang: {
    need: { title: 'What you need', lines: ({ testMass }: GuideNumbers) => [
      `${testMass === null ? 'The mass that the card of the gathering knot tells' : `A mass of at least ${testMass}`}: water in a bucket, sand or books, weighed.`,
      'Something round and firm for it to lie in, shaped like the pot.',
      'A thick cushion, a needle with bright thread or a pencil, and a ruler.',
    ] },
    ready: { title: 'Safety first', lines: () => [
      'Hang it as low as it goes, with the cushion beneath and no more than a hand’s width to fall. Nobody sits, sleeps or plays there meanwhile.',
      'Mark every strand with a stitch of thread or a pencil line just where it comes out above the wraps.',
      'Hang ring, stick, hook and what is between as they will be used, if one of them is to be tested too.',
    ] },
    doing: { title: 'Hang it', lines: ({ testTime, slip }: GuideNumbers) => [
      'Lower the mass in gently, let go slowly, and step back. Stay to the side.',
      `Leave it for ${testTime} or longer. Look after an hour: at a crack, a crackle or a strand that runs, lower it and stop.`,
      `Then measure how far each mark has moved out of the wraps, and take the largest. Less than ${slip} counts; at more, tie the knot anew with more wraps and begin again.`,
    ] },
    writing: { title: 'Write it down', lines: () => ['What hung in it and how long, how far the marks had moved, and the day. If it was a bucket of water, its litres do instead of a weight.'] },
    changed: { title: 'What it changes', lines: () => [] },
  },
  pullInPlace: {
    need: { title: 'What you need', lines: ({ pullInPlace }: GuideNumbers) => [
      `${pullInPlace === null ? 'The mass that the card of the fixing tells' : `A mass of at least ${pullInPlace}`}: an empty bucket and water, or weights in a strong bag; or a luggage scale to pull with.`,
      'A strong cord or strap to the hook, a thick cushion, glasses.',
    ] },
    ready: { title: 'Safety first', lines: () => [
      'Be sure that no pipe or cable runs there, and what the ceiling or wall is made of. If you are not sure, ask someone licensed.',
      'Hang the bucket so low that it can fall no further than a hand is wide, with the cushion beneath.',
      'Wear glasses, stand to the side and never under it: hook, plaster and bucket come down together.',
      'Do not stand on a ladder while you pull.',
    ] },
    doing: { title: 'Pull', lines: ({ pullInPlace }: GuideNumbers) => [
      `Fill slowly until ${pullInPlace === null ? 'that mass' : `at least ${pullInPlace}`} hangs there, in the direction the hanger will pull.`,
      'Leave it for some minutes and look: the hook must not bend or turn, nor the plaster crack, nor the thread creep out.',
      'If anything moves, take it down. That place does not hold; choose another or a longer fixing.',
    ] },
    writing: { title: 'Write it down', lines: () => ['What hung on it without anything moving.'] },
    changed: { title: 'What it changes', lines: () => [] },
  },
} as const
