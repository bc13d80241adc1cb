/**
 * Serves dist/ the way a plain web host would: files, folders by their index.html, a 404 page.
 * `npm start` uses it after a build, and so do the browser tests.
 */
import { createReadStream, existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const DIST = fileURLToPath(new URL('../../dist/', import.meta.url));

const TYPES: Record<string, string> = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

/** What to answer for a path: a file, a redirect to the folder's own address, or nothing. */
export function locate(path: string, root = DIST): { file: string } | { redirect: string } | null {
  let decoded: string;
  try {
    decoded = decodeURIComponent(path);
  } catch {
    return null;
  }
  const file = normalize(join(root, decoded));
  if (!(file + sep).startsWith(normalize(root)) || decoded.includes('\0')) return null;
  if (!existsSync(file)) return null;
  if (!statSync(file).isDirectory()) return { file };
  const index = join(file, 'index.html');
  if (!existsSync(index)) return null;
  // Relative links and the addresses readers keep both count on the slash.
  return path.endsWith('/') ? { file: index } : { redirect: `${path}/` };
}

/** Compressed once, until the file changes. */
const packed = new Map<string, { changed: number; body: Buffer }>();

/** The file as hosts send text: compressed. Null for what is compressed in itself. */
function gzipped(file: string): Buffer | null {
  if (!/^(text|image\/svg|application\/(json|xml|manifest))/.test(TYPES[extname(file)] ?? '')) {
    return null;
  }
  const changed = statSync(file).mtimeMs;
  const known = packed.get(file);
  if (known?.changed === changed) return known.body;
  const body = gzipSync(readFileSync(file));
  packed.set(file, { changed, body });
  return body;
}

export function siteServer(root = DIST): Server {
  return createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { allow: 'GET, HEAD' }).end();
      return;
    }
    const url = new URL(request.url ?? '/', 'http://localhost');
    const found = locate(url.pathname, root);
    if (found && 'redirect' in found) {
      response.writeHead(308, { location: found.redirect + url.search }).end();
      return;
    }
    const missing = join(root, '404.html');
    const file = found?.file ?? (existsSync(missing) ? missing : null);
    const status = found ? 200 : 404;
    if (!file) {
      response.writeHead(status, { 'content-type': 'text/plain' }).end('Not found');
      return;
    }
    const body = /\bgzip\b/.test(request.headers['accept-encoding'] ?? '') ? gzipped(file) : null;
    response.writeHead(status, {
      'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
      'content-length': body?.length ?? statSync(file).size,
      ...(body && { 'content-encoding': 'gzip' }),
      vary: 'accept-encoding',
      // Built files carry a hash in their name; everything else may change with the next build.
      'cache-control': file.includes(`${sep}_astro${sep}`) ? 'max-age=31536000' : 'no-cache',
      'x-content-type-options': 'nosniff',
    });
    if (request.method === 'HEAD') response.end();
    else if (body) response.end(body);
    else createReadStream(file).pipe(response);
  });
}

/** Listens on the port asked for, or on the next free one; gives the address. */
export function listen(server: Server, port: number, strict = false): Promise<string> {
  return new Promise((resolve, reject) => {
    const onError = (error: NodeJS.ErrnoException): void => {
      if (strict || error.code !== 'EADDRINUSE') reject(error);
      else resolve(listen(server, port + 1));
    };
    server.once('error', onError);
    server.listen(port, 'localhost', () => {
      server.off('error', onError);
      resolve(`http://localhost:${port}/`);
    });
  });
}

if (import.meta.main) {
  if (!existsSync(join(DIST, 'index.html'))) {
    console.error('Nothing to serve: run `npm run build` first.');
    process.exit(1);
  }
  const given = process.env['PORT'];
  const address = await listen(siteServer(), Number(given ?? 4321), given !== undefined);
  console.log(`\nThe handbook is open at ${address}\nStop it with Ctrl+C.`);
}
