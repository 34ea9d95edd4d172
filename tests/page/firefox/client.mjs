// A small client of WebDriver BiDi: starts Firefox, asks it things, ends it.
//
// The page tests' driver needs a Firefox of its own making; this one drives the distribution's.

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

const k_start_ms = 60_000;
const k_answer_ms = 60_000;

const prefs = {
  'browser.shell.checkDefaultBrowser': false,
  'browser.startup.homepage_override.mstone': 'ignore',
  'datareporting.policy.dataSubmissionEnabled': false,
  'toolkit.telemetry.reportingpolicy.firstRun': false,
  'app.update.enabled': false,
  'app.normandy.enabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'extensions.getAddons.cache.enabled': false,
  'webgl.force-enabled': true,
};

/** A port that nobody listens on just now. */
async function free_port() {
  const { createServer } = await import('node:net');
  const server = createServer();
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address();
  await new Promise((done) => server.close(done));
  return port;
}

async function connect(address) {
  const end = Date.now() + k_start_ms;
  for (;;) {
    const socket = new WebSocket(address);
    const open = await new Promise((done) => {
      socket.onopen = () => done(true);
      socket.onerror = () => done(false);
    });
    if (open) return socket;
    if (Date.now() > end) throw new Error(`Firefox does not answer at ${address}`);
    await pause(200);
  }
}

/** Firefox with one tab: { send, evaluate, on, close, context }. */
export async function firefox({ headless, env = {}, port } = {}) {
  const profile = mkdtempSync(join(tmpdir(), 'treadle-firefox-'));
  writeFileSync(join(profile, 'user.js'),
    Object.entries(prefs).map(([name, value]) => `user_pref("${name}", ${JSON.stringify(value)});\n`).join(''));
  const at = port ?? (await free_port());
  const program = spawn('firefox-esr', ['--no-remote', '--profile', profile, '--remote-debugging-port',
    String(at), ...(headless ? ['--headless'] : [])],
  { env: { ...process.env, ...env, MOZ_CRASHREPORTER_DISABLE: '1', LIBGL_ALWAYS_SOFTWARE: '1' }, stdio: 'ignore' });
  const gone = new Promise((done) => program.once('exit', done));
  const close = async () => {
    program.kill('SIGTERM');
    if (!(await Promise.race([gone.then(() => true), pause(5000, false)]))) program.kill('SIGKILL');
    await gone;
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    const socket = await connect(`ws://127.0.0.1:${at}/session`);
    return { ...(await session(socket)), close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function session(socket) {
  let last = 0;
  const waiting = new Map();
  const listeners = [];
  socket.onmessage = ({ data }) => {
    const message = JSON.parse(data);
    if (message.type === 'event') return listeners.forEach((one) => one(message));
    const asked = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.type === 'error') asked?.fail(new Error(`${message.error}: ${message.message}`));
    else asked?.done(message.result);
  };
  const send = (method, params = {}) =>
    new Promise((done, fail) => {
      const id = ++last;
      const clock = setTimeout(() => fail(new Error(`${method}: no answer`)), k_answer_ms);
      const end = (then) => (what) => {
        clearTimeout(clock);
        then(what);
      };
      waiting.set(id, { done: end(done), fail: end(fail) });
      socket.send(JSON.stringify({ id, method, params }));
    });
  await send('session.new', { capabilities: {} });
  const { contexts } = await send('browsingContext.getTree');
  const context = contexts[0].context;
  /** Value of an expression in the page, which may be a promise. It must be plain. */
  const evaluate = async (expression) => {
    const { type, result, exceptionDetails } = await send('script.evaluate', {
      expression: `Promise.resolve(${expression}).then((value) => JSON.stringify(value))`,
      target: { context }, awaitPromise: true,
    });
    if (type === 'exception') throw new Error(exceptionDetails.text);
    return result.type === 'string' ? JSON.parse(result.value) : undefined;
  };
  return { send, evaluate, context, on: (listener) => listeners.push(listener) };
}
