// The links that the page's build makes are those of the command, byte for byte.
//
//   node tests/link/wasm.mjs      after the builds of build/release and build/web
//
// Ends with `LINK n passed, n failed`.

import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const run = (program, ...words) => execFileSync(program, words, { encoding: 'utf8', cwd: root });

run('cmake', '--build', '--preset', 'web', '--target', 'print_link');
// The packaged emscripten opens its own files wrongly where node has a fetch of its own.
const start = 'delete globalThis.fetch; require(process.argv[1])';
const inPage = (file) => run('node', '-e', start, join(root, 'build/web/tests/link/print_link.js'), file);
let passed = 0;
let failed = 0;
for (const name of readdirSync(join(root, 'assets/demo'))) {
  const file = join(root, 'assets/demo', name);
  const link = run('build/release/treadle', 'link', file);
  const native = link + run('build/release/treadle', 'link', '--read', link.trim());
  if (inPage(file) === native) {
    passed += 1;
  } else {
    failed += 1;
    console.log(`FAILED ${name}: the page's link or what it reads from one is another`);
  }
}
console.log(`LINK ${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
