/** A day as YYYY-MM-DD, by the clock of the place. */
export function todayText(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
