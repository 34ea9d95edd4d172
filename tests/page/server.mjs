// Serves a folder to the browser under test, as a plain static host would.

import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const mime = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/**
 * Starts on a free port, or on `port`. What it gives can be changed while it runs: `folder`, which is
 * a new version laid on the host; `types` by ending; `headers` of every answer; `instead`, bytes by
 * address, or null for a file that is gone. `asked` are the addresses so far.
 */
export async function serve(folder, port = 0) {
  const host = { folder, types: { ...mime }, headers: {}, instead: new Map(), asked: [] };
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
    host.asked.push(path);
    const name = path.endsWith('/') ? `${path}index.html` : path;
    const file = normalize(join(host.folder, name));
    const inside = file.startsWith(normalize(host.folder) + sep);
    const other = host.instead.get(name);
    const found = other !== null && inside && (await stat(file).catch(() => null))?.isFile();
    if (!found && !other) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('not here');
      return;
    }
    response.writeHead(200, {
      'content-type': host.types[extname(file)] ?? 'application/octet-stream',
      'cache-control': 'no-cache',
      ...host.headers,
    });
    if (other) response.end(other);
    else createReadStream(file).pipe(response);
  });
  await new Promise((resolve) => server.listen(port, '127.0.0.1', resolve));
  host.port = server.address().port;
  host.origin = `http://localhost:${host.port}`;
  host.close = () => new Promise((resolve) => {
    server.close(resolve);
    server.closeAllConnections(); // a browser keeps its own open
  });
  return host;
}
