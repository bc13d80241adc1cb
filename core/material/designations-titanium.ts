/**
 * Titanium after ASTM B348, DIN 17850 and 17851 and the UNS; nickel alloys by number after ASTM B637 and
 * EN 10095: recalled, not re-read. No trade names.
 */

import type { GradeGroup } from './grade-group';

export const TITANIUM_AND_NICKEL: readonly GradeGroup[] = [
  {
    row: 'titanium',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      Ti~Grade~1 Titanium~Grade~1 3.7025 R50250 Ti1 TA1
      Ti~Grade~2 Titanium~Grade~2 3.7035 R50400 Ti2 TA2 CPTi TiCP CPTitanium
      Ti~Grade~3 Titanium~Grade~3 3.7055 R50550 Ti3
      Ti~Grade~4 Titanium~Grade~4 3.7065 R50700 Ti4
      Ti-6Al-4V TiAl6V4 3.7165 3.7164 R56400 Ti~Grade~5 Titanium~Grade~5 Ti5 Ti64 Ti6-4 6Al-4V TA6V
      Ti-6Al-4V-ELI TiAl6V4ELI R56401 R56407 Ti~Grade~23 Titanium~Grade~23
      Ti~Grade~7 Titanium~Grade~7 3.7235 R52400
      Ti~Grade~9 Titanium~Grade~9 Ti-3Al-2.5V R56320
      Ti~Grade~12 Titanium~Grade~12 R53400
      Ti-6Al-2Sn-4Zr-2Mo Ti6242 R54620
      Ti-6Al-6V-2Sn R56620
      Ti-10V-2Fe-3Al
      Ti-5Al-2.5Sn R54520
      Ti-6Al-7Nb
    `,
  },
  {
    row: 'nickel',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      Ni99.2 2.4066 N02200 Alloy200
      N02201 2.4068 Alloy201
      N04400 2.4360 NiCu30Fe Alloy400
      N06600 2.4816 NiCr15Fe Alloy600
      N06601 2.4851 NiCr23Fe Alloy601
      N06617 2.4663 Alloy617
      N06625 2.4856 NiCr22Mo9Nb Alloy625 625
      N08800 1.4876 Alloy800 N08810
      N08825 2.4858 NiCr21Mo Alloy825 825
      N08020 2.4660 Alloy20
      N10276 2.4819 NiMo16Cr15W AlloyC276 C-276
      N06022 2.4602
      N06002 2.4665 NiCr22Fe18Mo
    `,
  },
  {
    row: 'nickel',
    rule: 'aged-nickel',
    source: 'from-memory',
    grades: `
      N07718 2.4668 NiCr19NbMo NiCr19Fe19Nb5Mo3 Alloy718 718
      N07750 2.4669 NiCr15Fe7TiAl AlloyX750 X-750
      N05500 2.4375 NiCu30Al AlloyK500 K-500
      N07080 2.4952 NiCr20TiAl Alloy80A
      N07001 2.4654
      N09925 Alloy925
    `,
  },
];
