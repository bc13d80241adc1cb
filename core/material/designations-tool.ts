/**
 * Tool and bearing steels. Equivalents after EN ISO 4957, EN ISO 683-17, ASTM A681, A600 and A686, BS 4659 and
 * JIS G4401, G4403 and G4404: recalled, not re-read.
 */

import type { GradeGroup } from './grade-group';

export const TOOL_STEELS: readonly GradeGroup[] = [
  {
    // Annealed it is cut like an alloy steel; hardened it is not tapped at all.
    row: 'steel-alloy',
    rule: 'tool',
    source: 'from-memory',
    grades: `
      C45U 1.1730 C45W
      C80U 1.1525 C80W1 W108 SK5
      C105U 1.1545 C105W1 W1 W110 T72301 SK3 BW1A
      102Cr6 1.2067 L3 L1
      115CrV3 1.2210 L2 BS1407
      107CrV3
      90MnCrV8 1.2842 O2 T31502 BO2
      100MnCrW4 1.2510 95MnWCr5 O1 T31501 BO1 SKS3
      105WCr6 1.2419 SKS31 O7
      60WCrV8 1.2550 60WCrV7 S1 T41901 BS1
      S5
      S7 T41907 1.2355 50CrMoV13-15
      X100CrMoV5 1.2363 X100CrMoV5-1 BA2 SKD12 T30102
      T30104
      A6 T30106
      A8 A10
      X153CrMoV12 1.2379 X155CrVMo12-1 D2 T30402 BD2 SKD11
      X210Cr12 1.2080 D3 T30403 BD3 SKD1
      X210CrW12 1.2436 D6 X210CrW12-1 SKD2
      X165CrMoV12 1.2601 D5 T30405
      X37CrMoV5-1 1.2343 X38CrMoV5-1 H11 T20811 BH11 SKD6
      X40CrMoV5-1 1.2344 H13 T20813 BH13 SKD61
      X38CrMoV5-3 1.2367
      32CrMoV12-28 1.2365 X32CrMoV3-3 H10 T20810 BH10 SKD7
      X30WCrV9-3 1.2581 H21 T20821 BH21 SKD5
      55NiCrMoV7 1.2714 1.2713 56NiCrMoV7 L6 T61206 SKT4
      45NiCrMo16 1.2767 X45NiCrMo4 6F7
      X19NiCrMo4 1.2764
      21MnCr5 1.2162
      X36CrMo17 1.2316
      X42Cr13 1.2083
      HS6-5-2 1.3343 S6-5-2 HS6-5-2C T11302 BM2 SKH51 M2~HSS M2~high~speed~steel
      HS6-5-2-5 1.3243 S6-5-2-5 SKH55 M35~HSS
      HS2-9-1-8 1.3247 S2-10-1-8 T11342 BM42 SKH59 M42~HSS
      HS18-0-1 1.3355 S18-0-1 T12001 BT1 SKH2
      100Cr6 1.3505 52100 G52986 E52100 SUJ2 534A99 535A99 EN31
      100CrMn6 1.3520 100CrMnSi6-4
    `,
  },
  {
    // Mould steels, sold at 28 to 34 HRC.
    row: 'steel-alloy-30hrc',
    rule: 'mould',
    source: 'from-memory',
    grades: `
      35CrMo7 1.2302 1.2330
      40CrMnMo7 1.2311 P20 T51620 BP20
      40CrMnMoS8-6 1.2312 40CrMnMoS86 P20S
      40CrMnNiMo8-6-4 1.2738 40CrMnNiMo864 P20Ni
      X33CrS16 1.2085
    `,
  },
];
