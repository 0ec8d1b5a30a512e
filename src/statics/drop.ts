/**
 * Greatest force over the weight when a weight falls a height h on to a spring of stiffness K:
 * 1 + sqrt(1 + 2 h K / W) (energy; Gere, Mechanics of Materials, 7th ed., problem 9.10-1).
 * @example h = 0 gives 2; h K / W = 7.5 gives 5
 */
export const dropFactor = (height: number, stiffness: number, weight: number): number => 1 + Math.sqrt(1 + (2 * height * stiffness) / weight)
