/** What a reader waits for: Lighthouse as on a phone, and the time from a key to the picture on a slow PC. */
import { allPages } from '../tools/pages.ts';
import { listen, siteServer } from '../tools/serve.ts';
import {
  ANSWER,
  floorPage,
  HOLE,
  lighthouseOf,
  SLOWER,
  typingIn,
  wanted,
  withBrowser,
} from './measure.ts';

const DEBUGGING = 4425;
const PAINT_MS = 50;

const server = siteServer();
const address = (await listen(server, 4424)).replace(/\/$/, '');

async function runLighthouse(): Promise<void> {
  const lessons = allPages().filter((page) => /^\/lessons\/./.test(page));
  for (const page of ['/', '/plan/', '/lessons/', ...lessons, '/sources/']) {
    const { scores } = await lighthouseOf(address + page, DEBUGGING);
    const low = scores.some((score) => score < wanted(page));
    console.log(`Lighthouse ${page}: ${scores.join(' ')}${low ? `  BELOW ${wanted(page)}` : ''}`);
    if (low) process.exitCode = 1;
  }
}

try {
  await withBrowser([`--remote-debugging-port=${DEBUGGING}`], runLighthouse);
  await withBrowser([], async (browser) => {
    const { key, answer } = await typingIn(
      await floorPage(browser),
      `${address}/plan/?${HOLE}`,
      ANSWER,
    );
    console.log(
      `${SLOWER} × slower, 95th percentile of ${key.keys} keys: seen after ${key.ms} ms, at most ${PAINT_MS}; ` +
        `answered after ${answer.ms.toFixed(0)} ms`,
    );
    if (!(key.ms <= PAINT_MS) || key.keys === 0) process.exitCode = 1;
  });
} finally {
  server.close();
}
