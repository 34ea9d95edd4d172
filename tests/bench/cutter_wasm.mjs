// Works the lists of standard input (cutter_lists) in both modules, and sets times side by side.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { is_kept, machine } from '../../web/site/cutter.mjs';

const [parts, work, title] = process.argv.slice(2);
const lists = readFileSync(0, 'utf8').trim().split('\n').map((line) => {
  const [name, ms, list, answer] = line.split('\t');
  return { name, ms: Number(ms), list, answer };
});
const modules = ['simd', 'plain'].map((name) =>
  ({ name, module: new WebAssembly.Module(readFileSync(join(parts, `cutter-${name}.wasm`))) }));

let differ = 0;
let largest = 0;
let runs = null; // as the worker keeps it
function worked(module, { name, list, answer }) {
  runs ??= machine(module);
  const search = runs.open(list);
  const from = performance.now();
  runs.run(search, Number(work), Number(work));
  const ms = performance.now() - from;
  if (runs.answer(search) !== answer) {
    differ += 1;
    console.log(`  another answer than natively: ${name}`);
  }
  runs.close(search);
  largest = Math.max(largest, runs.memory());
  if (!is_kept(runs)) runs = null;
  return ms;
}

const mean = (times) => times.reduce((sum, ms) => sum + ms, 0) / times.length;
const native = mean(lists.map(({ ms }) => ms));
let line = `${title}: ${lists.length} lists, native ${native.toFixed(2)} ms`;
for (const { name, module } of modules) {
  runs = null;
  const rounds = [1, 2, 3, 4].map(() => lists.map((list) => worked(module, list)));
  const first = rounds.shift();
  const best = lists.map((_, i) => Math.min(...rounds.map((times) => times[i])));
  line += `; ${name} ${mean(best).toFixed(2)} ms (${(mean(best) / native).toFixed(2)} times)`;
  line += `, newly loaded ${mean(first).toFixed(2)}, ${Math.max(...first).toFixed(1)} at most`;
}
console.log(`${line}; ${(largest / 1048576).toFixed(1)} MB at most`);
process.exitCode = differ === 0 ? 0 : 1;
