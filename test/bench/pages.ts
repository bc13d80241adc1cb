/** What a reader waits for: Lighthouse as on a phone, and the time from a key to the picture on a slow PC. */
import { allPages } from '../tools/pages.ts';
import { listen, siteServer } from '../tools/serve.ts';
import {
  ANSWER,
  floorPage,
  HOLE,
  SLOWER,
  typingIn,
  wanted,
  withBrowser,
  withLighthouse,
  type Ask,
} from './measure.ts';

const PAINT_MS = 50;

const server = siteServer();
const address = (await listen(server, 4424)).replace(/\/$/, '');

async function runLighthouse(ask: Ask): Promise<void> {
  const lessons = allPages().filter((page) => /^\/lessons\/./.test(page));
  for (const page of ['/', '/plan/', '/lessons/', ...lessons, '/sources/']) {
    const { scores } = await ask(address + page);
    const low = scores.some((score) => score < wanted(page));
    console.log(`Lighthouse ${page}: ${scores.join(' ')}${low ? `  BELOW ${wanted(page)}` : ''}`);
    if (low) process.exitCode = 1;
  }
}

try {
  await withLighthouse(runLighthouse);
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
