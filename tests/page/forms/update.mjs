// A new version on the host: nothing is mixed, nothing is lost, and nobody is reloaded unasked.

import assert from 'node:assert/strict';

import { control, is_long, open, picture, ready, said, site_file, test, until } from '../harness.mjs';
import {
  accept_notice,
  find,
  go,
  k_part,
  part_row,
  place,
  set_thickness,
  things,
  verdict_words,
} from '../words.mjs';
import {
  build_of, k_kept_ms, k_plain_name, loaded_by, look_for_versions, make_site, on_bench, state_of, switch_key,
  works_offline,
} from './bench.mjs';

const pieces = (page) => control(page, 'textbox', 'Pieces');
const k_typed = '77'; // never entered
const k_versions = is_long ? 10 : 3;

async function is_whole(page, site) {
  assert.equal(await build_of(page), site.id);
  for (const name of await loaded_by(page))
    assert.ok(name === '' || site.files.has(name), `${name} is not of build ${site.id}`);
}

/** An edit that is stored, and another that still stands in its field. */
async function edit_and_type(page) {
  await set_thickness(page, '7/16');
  await until('the edit', async () => /7\/16/.test(await verdict_words(page)));
  await until('it is stored', async () => /Saved \d/.test(await said(page)));
  await pieces(page).click();
  await pieces(page).fill(k_typed);
}

async function nothing_lost(page) {
  await until('the typing is back', async () => (await pieces(page).inputValue()) === k_typed);
  assert.match(await verdict_words(page), /7\/16/);
  assert.doesNotMatch(await verdict_words(page), / 77 pieces/);
}

/** Only the tab in front draws. */
async function opened_again(page, site) {
  await page.bringToFront();
  await until(`build ${site.id}`, async () =>
    (await build_of(page)) === site.id && (await state_of(page)) === 'ready', k_kept_ms);
}

for (const [look, viewport] of [['desk', { width: 1280, height: 800 }], ['tablet', { width: 800, height: 1280 }]]) {
  test(`a new version: two tabs, typing, one consent, ${look}`, { alone: true }, async () => {
    const [a, b] = ['0.1.1', '0.1.2'].map(make_site);
    await on_bench({ folder: a.folder, sites: [a, b], options: { viewport } }, async (bench) => {
      const [typing, other] = [await bench.tab(), await bench.tab()];
      await Promise.all([open(typing), open(other)]);
      for (const page of [typing, other]) {
        await page.bringToFront();
        await accept_notice(page);
      }
      await go(other, 'Sheets');
      await works_offline(other);
      await typing.bringToFront();
      await edit_and_type(typing);
      bench.host.folder = b.folder;
      await look_for_versions(typing);
      for (const page of [typing, other]) {
        await page.bringToFront();
        await until(`the line in ${page === typing ? 'the first' : 'the other'} tab`, () => switch_key(page).count(), k_kept_ms);
        assert.match(await said(page), /A new version is ready\./);
        await picture(page, `forms-new-version-${look}-${page === typing ? 'typing' : 'other'}`);
      }
      await is_whole(typing, a);
      await is_whole(other, a);
      assert.deepEqual([typing.loads, other.loads], [1, 1], 'a tab was reloaded unasked');
      await switch_key(other).click();
      await opened_again(typing, b);
      await opened_again(other, b);
      await typing.bringToFront();
      await nothing_lost(typing);
      assert.equal(await place(other, 'Sheets').getAttribute('aria-selected'), 'true');
      await is_whole(typing, b);
      await is_whole(other, b);
      assert.deepEqual([typing.loads, other.loads], [2, 2], 'each tab opens again once');
      await works_offline(typing);
      assert.deepEqual(await typing.evaluate(() => caches.keys()), [`treadle-${b.id}`]);
      assert.deepEqual([...typing.faults, ...other.faults], []);
    });
  });
}

test('a new version waits until it is asked for, through reloads and new tabs', { alone: true }, async () => {
  const [a, b] = ['0.1.1', '0.1.2'].map(make_site);
  await on_bench({ folder: a.folder, sites: [a, b] }, async (bench) => {
    const page = await bench.tab();
    await open(page);
    await works_offline(page);
    bench.host.folder = b.folder;
    await page.reload();
    await ready(page);
    await until('the line', () => switch_key(page).count(), k_kept_ms);
    await page.reload();
    await ready(page);
    await is_whole(page, a);
    const another = await bench.tab();
    await open(another);
    await is_whole(another, a);
  });
});

test('on plain http a page goes on while another version is laid on its host', { alone: true }, async () => {
  const [a, b] = ['0.1.1', '0.1.2'].map(make_site);
  await on_bench({ folder: a.folder, sites: [a, b], name: k_plain_name }, async (bench) => {
    const page = await bench.tab();
    await open(page);
    await accept_notice(page);
    await until('all of it is here', () =>
      bench.host.asked.includes(`/${site_file('cutter.mjs', a.folder)}`) && loaded_by(page).then((names) =>
        ['cutter.mjs', 'cutting.mjs'].every((name) => names.includes(site_file(name, a.folder)))), k_kept_ms);
    await page.waitForLoadState('networkidle');
    bench.host.folder = b.folder;
    assert.equal(await switch_key(page).count(), 0);
    await go(page, 'Bars');
    await until('the bars', () => page.getByText(/^\d+ sections: .* bars, proven/).count());
    await go(page, 'Parts');
    await edit_and_type(page);
    await look_for_versions(page);
    await until('the line', () => switch_key(page).count());
    await is_whole(page, a);
    assert.equal(page.loads, 1);
    await switch_key(page).click();
    await opened_again(page, b);
    // To press the key is to leave the field, which enters what stands in it.
    await until('the typing is taken', async () => / 77 pieces/.test(await verdict_words(page)));
    assert.match(await verdict_words(page), /7\/16/);
    await is_whole(page, b);
    assert.equal(page.loads, 2);
  });
});

test('versions laid on the host, one in the middle of each start: never two in one page', { alone: true }, async () => {
  const sites = Array.from({ length: k_versions + 1 }, (_, i) => make_site(`0.2.${i}`));
  await on_bench({ folder: sites[0].folder, sites, name: k_plain_name }, async (bench) => {
    let told = 0;
    for (let i = 1; i < sites.length; ++i) {
      const page = await bench.tab();
      const asked = `/${site_file(i % 2 ? 'boot.mjs' : 'app.mjs', sites[i - 1].folder)}`;
      // The next version comes after the page has its address, and before it has its parts.
      const before = bench.host.asked.length;
      const come = until('the start', () => bench.host.asked.slice(before).includes(asked), k_kept_ms)
        .then(() => { bench.host.folder = sites[i].folder; });
      await page.goto(bench.origin);
      await come;
      await until('it starts or says why not', async () => (await state_of(page)) !== 'starting', k_kept_ms);
      if ((await state_of(page)) === 'trouble') {
        told += 1;
        assert.match(await page.locator('#trouble').textContent(), /updated on the server while it loaded.*Reload/s);
        await page.getByRole('link', { name: 'Try again' }).click();
        await opened_again(page, sites[i]);
        await is_whole(page, sites[i]);
      } else {
        await is_whole(page, sites[i - 1]);
      }
      await page.close();
    }
    console.log(`        ${told} of ${k_versions} starts were cut by a new version, and said so`);
  });
});

test('versions laid on the host under a kept page: every start is of one build', { alone: true }, async () => {
  const sites = Array.from({ length: k_versions + 1 }, (_, i) => make_site(`0.3.${i}`));
  await on_bench({ folder: sites[0].folder, sites }, async (bench) => {
    const page = await bench.tab();
    await open(page);
    await accept_notice(page);
    await works_offline(page);
    for (const next of sites.slice(1)) {
      bench.host.folder = next.folder;
      await look_for_versions(page);
      await page.reload();
      await ready(page);
      await is_whole(page, sites[0]);
    }
    await until('the line', () => switch_key(page).count(), k_kept_ms);
    const last = sites.at(-1);
    await until('the last version is the one that waits', async () => {
      await look_for_versions(page);
      return page.evaluate(async (name) => (await caches.keys()).includes(name)
        && !(await navigator.serviceWorker.getRegistration()).installing, `treadle-${last.id}`);
    }, k_kept_ms);
    await switch_key(page).click();
    await opened_again(page, last);
    await is_whole(page, last);
    await works_offline(page);
    await until('the job', () => part_row(page, k_part).isVisible());
    assert.equal(await find(page, things.understood).count(), 0);
    assert.deepEqual(await page.evaluate(() => caches.keys()), [`treadle-${last.id}`]);
    assert.deepEqual(page.faults, []);
  });
});
