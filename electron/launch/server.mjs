import { readFileSync, readdirSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import { extname, join, resolve, sep } from 'node:path'

const { policy } = JSON.parse(readFileSync(resolve(import.meta.dirname, '../contentSecurityPolicy.json'), 'utf8'))

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.woff2': 'font/woff2',
}

const HEADERS = {
  'Cache-Control': 'no-cache',
  'Content-Security-Policy': policy,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
}

/** The decoded path of a request, or null if it is malformed. */
function pathOf(url) {
  const [path] = url.split(/[?#]/, 1)
  if (!path.startsWith('/')) return null
  try {
    const decoded = decodeURIComponent(path)
    return decoded.includes('\0') ? null : decoded
  } catch {
    return null
  }
}

// Only what a listing of the folder names is served, so no path, however spelt, leads out of it.
function findFile(folder, path) {
  const wanted = path === '/' ? 'index.html' : path.slice(1)
  const entry = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((found) => found.isFile())
    .map((found) => join(found.parentPath, found.name))
    .find((file) => file.slice(folder.length + 1).split(sep).join('/') === wanted)
  return entry ?? null
}

async function answer(folder, request, port) {
  if (request.method !== 'GET' && request.method !== 'HEAD') return { status: 405, headers: { Allow: 'GET, HEAD' } }
  // A foreign name that was made to point at this computer must not read the pages (DNS rebinding).
  if (![`127.0.0.1:${port}`, `localhost:${port}`].includes(request.headers.host ?? '')) return { status: 403, headers: {} }
  const path = pathOf(request.url ?? '')
  if (path === null) return { status: 400, headers: {} }
  const file = findFile(folder, path)
  if (file === null) return { status: 404, headers: {} }
  const body = await readFile(file)
  return { status: 200, headers: { 'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream' }, body }
}

const listen = (server, port) => new Promise((done, fail) => {
  server.once('error', fail)
  server.listen(port, '127.0.0.1', () => {
    server.off('error', fail)
    done(server.address().port)
  })
})

/**
 * Serves a folder to this computer only.
 * @param {string} folder absolute
 * @param {number} firstPort tried first; if it is taken, the next nineteen, then any free one
 * @returns {Promise<{ port: number, close: () => Promise<void> }>}
 */
export async function serve(folder, firstPort) {
  let port = 0
  const server = createServer((request, response) => {
    answer(folder, request, port)
      .catch(() => ({ status: 500, headers: {} }))
      .then(({ status, headers, body }) => {
        response.writeHead(status, { ...HEADERS, 'Content-Type': 'text/plain; charset=utf-8', ...headers })
        response.end(request.method === 'HEAD' ? undefined : body ?? `${status}\n`)
      })
  })
  const candidates = Array.from({ length: 20 }, (_, step) => firstPort + step).filter((candidate) => candidate > 0 && candidate < 65_536)
  for (const candidate of firstPort === 0 ? [0] : [...candidates, 0]) {
    try {
      port = await listen(server, candidate)
      break
    } catch (error) {
      if (error.code !== 'EADDRINUSE' && error.code !== 'EACCES') throw error
    }
  }
  const close = () => new Promise((done) => {
    server.close(done)
    server.closeAllConnections()
  })
  return { port, close }
}
