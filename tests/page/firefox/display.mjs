// A screen for a browser that needs one: Xvfb, on a number that it picks itself.

import { spawn } from 'node:child_process';

export async function display(width, height) {
  const program = spawn('Xvfb', ['-displayfd', '1', '-screen', '0', `${width}x${height}x24`, '+extension', 'GLX',
    '-nolisten', 'tcp'], { stdio: ['ignore', 'pipe', 'ignore'] });
  const gone = new Promise((done) => program.once('exit', done));
  const number = await new Promise((done, fail) => {
    let words = '';
    program.once('error', fail);
    program.once('exit', () => fail(new Error('Xvfb did not start')));
    program.stdout.on('data', (bytes) => {
      words += bytes;
      if (words.includes('\n')) done(words.trim());
    });
  });
  return {
    name: `:${number}`,
    async close() {
      program.kill('SIGTERM');
      await gone;
    },
  };
}
