import { writeBy, writingHabits, type WritingHabits } from './writing'

/** On paper that others read: both ways of measuring, and days with their month by its name; the decimal mark as the maker writes it. */
const paperHabits = ({ decimalMark, dayOrder }: WritingHabits): WritingHabits =>
  ({ units: 'both', decimalMark, dayOrder: dayOrder === 'yearFirst' ? 'dayFirst' : dayOrder })

/** What is made with numbers written for paper; afterwards they are written as before. */
export function onPaper<T>(make: () => T): T {
  const before = writingHabits()
  writeBy(paperHabits(before))
  try {
    return make()
  } finally {
    writeBy(before)
  }
}
