import { range, type Range } from './basis'

/** Water that cord takes up when it is wetted, over its dry mass. */
export const CORD_WETTED: Range = range(0.16, 0.33, 0.5, '1', 'published', 'woven cotton dipped for ten seconds: 16 to 50 % (informal test on a maker’s page)')

/** Water in cord that is soaked and dripping, over its dry mass. */
export const CORD_DRIPPING: Range = range(1, 1.5, 2, '1', 'from memory', 'saturated cord: once to twice its dry mass')
