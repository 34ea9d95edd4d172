// The two modules that cut beside the page give the native answers, byte for byte.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';

import { open, root, site_file, test } from './harness.mjs';

const lists = process.env.TREADLE_LISTS
  ?? join(root, 'build', 'release', 'tests', 'bench', 'cutter_lists');
const k_lists = 100;
const k_work = 300_000_000; // of a made-up list, as the native program gives it

for (const name of ['cutter-simd.wasm', 'cutter-plain.wasm']) {
  test(`${name} answers a hundred lists as the native search does`, {}, async (page) => {
    await open(page);
    const made = execFileSync(lists, ['made', String(k_lists)], { encoding: 'utf8' })
      .trim().split('\n').map((line) => line.split('\t'));
    assert.equal(made.length, k_lists);
    const answers = await page.evaluate(async ({ script, name, texts, work }) => {
      const { machine } = await import(script);
      const module = await WebAssembly.compile(await (await fetch(name)).arrayBuffer());
      return texts.map((text) => {
        const runs = machine(module);
        const search = runs.open(text);
        // In uneven slices: what a slice is must not matter.
        for (let slice = 3e5; runs.run(search, slice, work); slice *= 1.7);
        return runs.answer(search);
      });
    }, { script: `/${site_file('cutter.mjs')}`, name: site_file(name), texts: made.map((fields) => fields[2]), work: k_work });
    answers.forEach((answer, i) => assert.equal(answer, made[i][3], made[i][0]));
  });
}
