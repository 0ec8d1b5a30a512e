import { join } from 'node:path'
import { build, isBuilt } from './building.mjs'
import { withLock } from './lock.mjs'
import { install, isInstalled } from './packages.mjs'
import { output } from './places.mjs'
import { say } from './say.mjs'

// Two launchers at once must not install or build over each other: the second waits, then looks again.
const alone = (work) =>
  withLock(join(output, '.lock'), () => say('Waiting for another process that is setting things up …'), work)

/** Installs the packages if they are missing or older than the lock file. */
export const ensureInstalled = async () => isInstalled() || alone(async () => isInstalled() || install())

/** Builds if out/ is missing or older than the sources. */
export const ensureBuilt = async () => isBuilt() || alone(async () => isBuilt() || build())
