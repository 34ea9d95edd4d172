// Lessons, taken as a student takes them: every one right and wrong, by role and name. What is right
// is what the command works out for the same seed: the page and the command have to agree.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

import { control, give_file, open, picture, root, said, site, test, until } from '../harness.mjs';
import { serve } from '../server.mjs';
import { accept_notice, go, open_file, place } from '../words.mjs';

const folder = join(root, 'assets', 'lessons');
const program = process.env.TREADLE ?? join(root, 'build', 'release', 'treadle');
const files = readdirSync(folder).filter((name) => name.endsWith('.json')).sort();

/** The command's words on each step: { kind, title, answer, slips: [{ step, figure }] }. */
function worked_out(file, seed = 1) {
  const out = execFileSync(program, ['lesson', join(folder, file), '--seed', String(seed)], { encoding: 'utf8' });
  const steps = [];
  for (const line of out.split('\n')) {
    const head = line.match(/^(\d+)\. ([^:]+\??): (.*)$/);
    const answer = line.match(/^ {4}answer: (.+?)(?: \(.*\))?$/);
    const slip = line.match(/^ {4}(\S[^:]*): (-?[\d.]+(?: [^ ]+)?) - /);
    if (head) steps.push({ kind: head[2], title: head[3], slips: [] });
    else if (answer) steps.at(-1).answer = answer[1];
    else if (slip) steps.at(-1).slips.push({ step: slip[1], figure: slip[2] });
  }
  return steps;
}

async function to_lessons(page, press = (thing) => thing.click()) {
  await open(page);
  await accept_notice(page, press);
  await press(place(page, 'Jobs'));
  await press(control(page, 'button', 'Lessons and demonstrations'));
  await until('the list', () => control(page, 'heading', 'Lessons', true).isVisible());
}

const key = (page, name) => control(page, 'button', name, true);

async function answer(page, text, press) {
  const field = control(page, 'textbox', /^Your answer/);
  await press(field);
  await field.fill(text);
  await field.press('Enter');
  await press(key(page, 'Check the answer'));
}

const hears = (page, what) => until(String(what), async () => what.test(await said(page)));

async function take_exercise(page, step, press) {
  if (step.slips.length > 0) {
    await answer(page, step.slips[0].figure, press);
    await hears(page, new RegExp(`Wrong step: ${step.slips[0].step}\\.`));
  } else {
    await answer(page, `1e9${step.answer.replace(/^[-\d.]+/, '')}`, press);
    await hears(page, /That is not it/);
  }
  await answer(page, step.answer, press);
  await hears(page, /Right: |Near enough/);
}

const outcomes = ['fits', 'fits up to a strength', 'does not fit', 'cannot be said'];

async function take_verdict(page, step, press) {
  const right = step.answer.startsWith('fits up to') ? outcomes[1] : step.answer;
  const wrong = outcomes.find((one) => one !== right);
  await press(key(page, `It ${wrong}`));
  await hears(page, /Wrong step: |The plan says otherwise/);
  await press(key(page, `It ${right}`));
  await hears(page, /Right: it /);
}

async function take_example(page, press) {
  await press(key(page, 'Show all of it'));
  await hears(page, /Ours agrees within/);
  await press(key(page, 'Break it'));
  await hears(page, /Refused at|does not fit/);
}

async function take(page, file, press) {
  const lesson = JSON.parse(readFileSync(join(folder, file), 'utf8'));
  const steps = worked_out(file);
  assert.equal(steps.length, lesson.steps.length);
  await press(key(page, `Open lesson: ${lesson.title}`));
  for (const [at, step] of steps.entries()) {
    await until(step.title, () => control(page, 'heading', step.title, true).count());
    if (step.kind === 'Exercise') await take_exercise(page, step, press);
    if (step.kind === 'Will it fit?') await take_verdict(page, step, press);
    if (step.kind === 'Worked example') await take_example(page, press);
    if (at + 1 < steps.length) await press(key(page, 'Next step'));
  }
  const questions = steps.filter(({ kind }) => kind === 'Exercise' || kind === 'Will it fit?').length;
  await press(key(page, 'All lessons'));
  if (questions > 0) await hears(page, new RegExp(`${questions} of ${questions} answered, ${questions} right`));
}

for (const file of files)
  test(`lesson ${file} is taken wrong and right`, {}, async (page) => {
    await to_lessons(page);
    await take(page, file, (thing) => thing.click());
  });

const tablet = { viewport: { width: 800, height: 1280 }, hasTouch: true, isMobile: true };
test('a lesson is taken with a finger on a tablet held upright', tablet, async (page) => {
  const press = (thing) => thing.tap();
  await to_lessons(page, press);
  await take(page, files[0], press);
  await picture(page, 'lessons-tablet');
});

test('a lesson is presented with P, with figures that the last row reads', {}, async (page) => {
  await to_lessons(page);
  await key(page, `Open lesson: ${JSON.parse(readFileSync(join(folder, files[0]), 'utf8')).title}`).click();
  await key(page, 'Next step').click();
  await page.keyboard.press('p');
  await until('the mark', () => control(page, 'heading', /^Presenter view: /).isVisible());
  for (let line = 0; line < 4; ++line) await key(page, 'Show the next line').click();
  await hears(page, /S = 50\.8 ksi/);
  const next = await until('the next line stays at hand', async () => {
    const box = await key(page, 'Show the next line').boundingBox();
    return box.y + box.height <= 800 - 60 && box;
  });
  assert.ok(next.y > 130, `under the head: ${next.y}`);
  await key(page, 'Show all of it').click();
  await hears(page, /Answer: 61\.80 ton/);
  const given = await page.getByText(/^size: 20 mm/).first().boundingBox();
  assert.ok(given.height * 0.7 >= 0.04 * 800, `a line of ${given.height} px`);
  await picture(page, 'lessons-presented');
  await page.keyboard.press('Escape');
  await until('the look of before', () => key(page, 'Print results').isVisible());
  await picture(page, 'lessons-example');
});

test('a demonstration is worked on beside the job, and the job stays', {}, async (page) => {
  await to_lessons(page);
  await key(page, 'Open lesson: Punching force and the margin that keeps you out of trouble').click();
  for (let i = 0; i < 5; ++i) await key(page, 'Next step').click();
  await until('the picture', () => control(page, 'heading', 'What it can do').isVisible());
  await control(page, 'combobox', 'Grade').selectOption({ label: 'A36' });
  await hears(page, /diameter 1: up to/);
  await picture(page, 'lessons-demonstration');
  await key(page, 'All lessons').click();
  await key(page, 'Back to the job').click();
  await until('the jobs', () => place(page, 'Jobs').isVisible());
});

test('one link gives a class its numbers, and the results are printed', {}, async (page) => {
  await open(page, '/#lesson=1-punching-force&seed=12&step=3&hide=answers');
  await accept_notice(page, (button) => button.click());
  await hears(page, /Numbers of set 12/);
  assert.ok(await key(page, 'Show the next line').isDisabled());
  const step = worked_out(files[0], 12)[2];
  await answer(page, step.slips[1].figure, (thing) => thing.click());
  await hears(page, new RegExp(`Wrong step: ${step.slips[1].step}`));
  await answer(page, step.answer, (thing) => thing.click());
  await hears(page, /Right: /);
  await page.evaluate(() => {
    window.print = () => {};
  });
  await key(page, 'Print results').click();
});

test('an instructor puts a lesson on the shelf, and another opens one from a file', {}, async (page) => {
  const host = await serve(site);
  try {
    const lesson = JSON.parse(readFileSync(join(folder, files[0]), 'utf8'));
    lesson.title = 'Tuesday evening class';
    host.instead.set('/shelf.json', Buffer.from(JSON.stringify({ format: 'treadle-shelf', version: 1,
      entries: [{ kind: 'lesson', title: 'For Tuesday', file: 'lessons/tuesday.json' }] })));
    host.instead.set('/lessons/tuesday.json', Buffer.from(JSON.stringify(lesson)));
    page.origin = host.origin;
    await open(page);
    await accept_notice(page, (button) => button.click());
    await go(page, 'Jobs');
    await key(page, 'Look at: For Tuesday').click();
    await until('the lesson', () => control(page, 'heading', 'Tuesday evening class').isVisible());
    await key(page, 'All lessons').click();
    await key(page, 'Back to the job').click();
    await give_file(page, () => open_file(page).click(), 'bad.json',
      '{"format":"treadle-lesson","version":1,"units":"inch","title":"x","steps":[{"do":"sing","title":"x"}]}');
    await hears(page, /bad\.json was not opened/);
  } finally {
    await host.close();
  }
});
