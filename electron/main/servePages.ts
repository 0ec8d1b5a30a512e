import { readFile } from 'node:fs/promises'
import { extname, join, sep } from 'node:path'
import security from '../contentSecurityPolicy.json'
import { isOwnAddress } from './origin'

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
}

const HEADERS = {
  'Content-Security-Policy': security.policy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
}

const refusal = (status: number): Response => new Response(null, { status, headers: HEADERS })

function fileFor(folder: string, address: string): string | null {
  if (!isOwnAddress(address)) return null
  try {
    const path = join(folder, decodeURIComponent(new URL(address).pathname))
    return path.startsWith(folder + sep) ? path : null
  } catch {
    return null // a stray percent sign
  }
}

/**
 * Answers requests for the app's own pages from one folder and from nowhere else, each answer with the
 * content security policy. What is not there, lies outside, or has an unknown ending is 404.
 *
 * @param folder absolute path without a closing separator
 */
export function servePages(folder: string): (request: Request) => Promise<Response> {
  return async ({ method, url }) => {
    if (method !== 'GET') return refusal(405)
    const path = fileFor(folder, url)
    const type = path === null ? undefined : TYPES[extname(path)]
    if (path === null || type === undefined) return refusal(404)
    try {
      return new Response(await readFile(path), { headers: { ...HEADERS, 'Content-Type': type } })
    } catch {
      return refusal(404)
    }
  }
}
