/** Plastics by the short names of ISO 1043-1 and ISO 1043-2: recalled, not re-read. No trade names. */

import type { GradeGroup } from './grade-group';

export const PLASTICS: readonly GradeGroup[] = [
  {
    row: 'plastic',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      POM POM-C POM-H acetal acetalcopolymer acetalhomopolymer polyacetal polyoxymethylene
      PA PA6 PA66 PA6.6 PA6/6 PA12 PA11 PA46 PA6G PA6-G nylon nylon6 nylon66 nylon6/6 nylon12 polyamide castnylon nailon poliamida
      PE HDPE PE-HD PE-HMW PE-UHMW UHMW UHMWPE UHMW-PE LDPE PE1000 PE500 PE300 polyethylene polietileno
      PP PP-H PP-C polypropylene polipropileno
      PVC PVC-U UPVC CPVC
      PVDF
      PTFE
      PEEK
      PEI
      PPS
      PPSU PSU
      PC polycarbonate policarbonato
      PMMA acrylic acrilico
      ABS ABS/PC PC/ABS
      PET PET-P PETP PBT PETG
      PAI
      PI polyimide
      ASA SAN
      PU PUR polyurethane
    `,
  },
  {
    row: 'plastic-filled',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      PA66-GF30 PA66GF PA66-GF25 PA66-GF15 PA66-GF35 PA66-GF50 PA6.6-GF30 PA66-CF30 nylon66GF30
      PA6-GF30 PA6-GF15 PA6-GF25 PA6-GF35 PA6-GF50 PA-GF30 PA12-GF30 nylonGF30
      POM-GF25 POM-GF30
      PEEK-GF30 PEEK-CF30 PEEK-CA30 PEEKGF PEEKCF
      PPS-GF40 PPS-GF30
      PEI-GF30
      PC-GF20 PC-GF30 PC-GF10
      PP-GF30 PP-GF20 PP-GF40
      PBT-GF30 PET-GF30 PBT-GF20
      PPA-GF50 PPA-GF33
      ABS-GF20
      GFRP GRP CFRP CFK GFK
      FR4 FR-4
    `,
  },
];
