/** What a programmer waits for who pastes a whole drawing: two hundred different holes on a slow PC. */
import { chromium } from '@playwright/test';
import { findBrowser, FLAGS } from '../browser.mjs';
import { listen, siteServer } from '../tools/serve.ts';

const SLOWER = 6;
const HOLES = 200;
const WANTED_MS = 1000;
const THREADS = ['M6-6H', 'M8-6H', 'M10×1.5-6H', 'M5', 'M12', '1/4-20 UNC-2B', '3/8-16 UNC-2B'];

/** No two lines alike, so that nothing planned for one serves another. */
const lines = Array.from({ length: HOLES }, (_, at) => {
  const depth = 6 + 0.1 * at;
  const text = `${(at % 7) + 1}X ${THREADS[at % THREADS.length]}`;
  return `${text} ↧${at % THREADS.length > 4 ? (depth / 25.4).toFixed(3) : depth.toFixed(1)}`;
});

const server = siteServer();
const address = await listen(server, 4423);
const { path: executablePath } = await findBrowser();
const browser = await chromium.launch({ executablePath, args: FLAGS });
try {
  const page = await browser.newPage({ serviceWorkers: 'block' });
  await page.goto(`${address}drawing/?holes=M8&material=al-wrought`);
  await page.locator('.planner-answer:not([id]) .part-hole').first().waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const ms = await page.evaluate(
    async ({ text, count }) => {
      const field = document.querySelector('textarea')!;
      const start = performance.now();
      field.value = text;
      field.dispatchEvent(new Event('input', { bubbles: true }));
      const judged = () => document.querySelectorAll('.planner-answer:not([id]) .part-hole').length;
      while (judged() < count && performance.now() - start < 30_000) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
      }
      return judged() < count ? Infinity : performance.now() - start;
    },
    { text: lines.join('\n'), count: HOLES },
  );
  console.log(
    `drawing: ${HOLES} different holes, ${SLOWER} × slower: ${Math.round(ms)} ms; at most ${WANTED_MS}`,
  );
  if (ms > WANTED_MS) process.exitCode = 1;
} finally {
  await browser.close();
  server.close();
}
