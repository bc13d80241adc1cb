/**
 * Renders the gallery to one page and photographs it, for looking at:
 *   node test/figures/look.mjs [folder] [part of a name] [390,320,wide,dark,print]
 * The snapshots must be fresh: run the figure tests first (-u to accept a change).
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync, existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const folder = process.argv[2] ?? join(tmpdir(), 'figures');
const part = process.argv[3] ?? '';
mkdirSync(folder, { recursive: true });

const font = here(
  '../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
);
const face = `@font-face{font-family:"Atkinson Hyperlegible Next Variable";font-weight:200 800;src:url(data:font/woff2;base64,${readFileSync(font, 'base64')})}`;
const css = ['tokens', 'base', 'figures']
  .map((name) => here(`../../site/styles/${name}.css`))
  .filter(existsSync)
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

const snapshots = here('snapshots');
const names = readdirSync(snapshots).filter(
  (name) => name.endsWith('.html') && name.includes(part),
);
const page = (body) =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Figures</title><style>${face}${css}</style><body>${body}</body></html>`;
writeFileSync(
  join(folder, 'gallery.html'),
  page(
    names
      .map((name) => `<h2>${name}</h2>${readFileSync(join(snapshots, name), 'utf8')}`)
      .join('\n'),
  ),
);

const executablePath = process.env.CHROME_PATH ?? ['/usr/bin/chromium'].find(existsSync);
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: [
    '--no-sandbox',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
const looks = [
  { suffix: '390', width: 354, across: 4 },
  { suffix: '320', width: 284, across: 5 },
  { suffix: 'wide', width: 720, across: 2 },
  { suffix: 'dark', width: 354, across: 4, dark: true },
  { suffix: 'print', width: 354, across: 4, print: true },
];
const wanted = (process.argv[4] ?? '390').split(',');
for (const look of looks.filter(({ suffix }) => wanted.includes(suffix))) {
  const tab = await browser.newPage({
    viewport: { width: look.across * (look.width + 24), height: 400 },
    deviceScaleFactor: 1.4,
  });
  await tab.emulateMedia({
    colorScheme: look.dark ? 'dark' : 'light',
    media: look.print ? 'print' : 'screen',
  });
  for (let first = 0, sheet = 1; first < names.length; first += look.across, sheet += 1) {
    const boxes = names
      .slice(first, first + look.across)
      .map(
        (name) =>
          `<div class="box"><small>${name}</small>${readFileSync(join(snapshots, name), 'utf8')}</div>`,
      );
    await tab.setContent(page(`<div class="sheet">${boxes.join('')}</div>`));
    await tab.addStyleTag({
      content: `body{margin:0;padding:0;${look.print ? 'filter:grayscale(1)' : ''}}.sheet{display:flex;gap:24px}.box{flex:0 0 ${look.width}px;width:${look.width}px}`,
    });
    await tab.screenshot({
      path: join(folder, `sheet-${look.suffix}-${sheet}.png`),
      fullPage: true,
    });
  }
  await tab.close();
}
await browser.close();
process.stdout.write(`${folder}\n`);
