import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright/test'

/**
 * What stands in the way of somebody who sees, hears or types otherwise, each as rule and place.
 *
 * @param within selector of the part of the page that is looked at
 * @param rules those to look for, or all
 */
export async function violations(page: Page, within: string, rules: readonly string[] | 'all'): Promise<string[]> {
  const axe = new AxeBuilder({ page }).include(within)
    // Only what is wrong is written out: whatever is right has no place worth naming, and naming it takes longer than all the rules.
    .options({ resultTypes: ['violations'], ...(rules === 'all' ? {} : { runOnly: [...rules] }) })
    // There are no frames, which alone need a second page to be looked at.
    .setLegacyMode(true)
  return (await axe.analyze()).violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}
