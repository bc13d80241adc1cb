/** An address as a square code, drawn as one path so that it prints sharp and needs no picture file. */

import { encode } from 'uqr';

export interface QrCodeProps {
  text: string;
  label: string;
}

/** Quiet zone that readers need around the code, in modules. */
const MARGIN = 4;

function darkPath(rows: readonly (readonly boolean[])[]): string {
  let path = '';
  rows.forEach((row, y) => {
    let start = -1;
    for (let x = 0; x <= row.length; x += 1) {
      if (row[x] && start < 0) start = x;
      if (!row[x] && start >= 0) {
        path += `M${start} ${y}h${x - start}v1H${start}z`;
        start = -1;
      }
    }
  });
  return path;
}

/** Medium correction: a thumbprint may cover a seventh of it. Nothing is drawn for a text too long to hold. */
export function QrCode({ text, label }: QrCodeProps) {
  let code;
  try {
    code = encode(text, { ecc: 'M', border: MARGIN });
  } catch {
    return null;
  }
  return (
    <svg class="qr" viewBox={`0 0 ${code.size} ${code.size}`} role="img" aria-label={label}>
      <rect class="qr-light" width={code.size} height={code.size} />
      <path class="qr-dark" d={darkPath(code.data)} shape-rendering="crispEdges" />
    </svg>
  );
}
