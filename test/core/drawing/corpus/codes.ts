/** Drawing exchange text: percent codes, code points, paragraphs, symbol fonts. Read by a person, row by row; steel-medium. */

import type { Row } from './row';

export const CODES: readonly Row[] = [
  {
    line: '%%c6.8 \\U+21A722 M8 \\U+21A716',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M8x1.25-6H',
    fullThread: 16,
    hole: { diameter: 6.8, depth: 22, at: 'shoulder' },
  },
  {
    line: '%%c6.8 \\U+21A720 M8 \\U+21A716',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M8x1.25-6H',
    fullThread: 16,
    hole: { diameter: 6.8, depth: 20, at: 'shoulder' },
  },
  {
    line: '4X M8\\PTHRU',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M8x1.25-6H',
    count: 4,
    through: true,
  },
  {
    line: '{\\Fgdt;n}6.8 {\\Fgdt;x}20 M8 {\\Fgdt;x}16',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M8x1.25-6H',
    fullThread: 16,
    hole: { diameter: 6.8, depth: 20, at: 'shoulder' },
  },
  {
    line: '%%c8.5 x 25 DEEP, M10 x 20 DEEP',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M10x1.5-6H',
    fullThread: 20,
    hole: { diameter: 8.5, depth: 25, at: 'shoulder' },
  },
  {
    line: '4X M6\\U+00D71 \\U+21A712',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M6x1-6H',
    count: 4,
    fullThread: 12,
  },
  {
    line: '{\\H1.5x;4X M8} \\U+21A716',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M8x1.25-6H',
    count: 4,
    fullThread: 16,
  },
  {
    line: 'M8 \\U+21A716\\PTYP',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M8x1.25-6H',
    fullThread: 16,
  },
  {
    line: 'M8\\~x\\~1.25 \\U+21A716',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M8x1.25-6H',
    fullThread: 16,
  },
  {
    line: '\\A1;2X M10 \\U+21A720',
    from: 'exchange text, from memory',
    verdict: 'ready',
    thread: 'M10x1.5-6H',
    count: 2,
    fullThread: 20,
  },
];
