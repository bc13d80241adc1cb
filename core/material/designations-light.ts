/**
 * Aluminium, magnesium and zinc. Numbers after EN 573-3 and the Aluminum Association's register, castings after
 * EN 1706, ASTM B26, B85 and BS 1490, magnesium after EN 1753 and ASTM B94, zinc after EN 12844 and ASTM B86;
 * old DIN 1725: recalled, not re-read.
 */

import type { GradeGroup } from './grade-group';

export const LIGHT_METALS: readonly GradeGroup[] = [
  {
    // Not heat treatable: the temper moves its strength, not its row.
    row: 'al-wrought',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      1050A AW-1050 Al99.5 3.0255 A91050 A1050
      AW-1060 A91060 A1060
      1070A AW-1070 Al99.7 3.0275 A91070 A1070
      1080A AW-1080 Al99.8 3.0285
      1100 A91100 A1100
      1200 Al99.0 3.0205 A91200 A1200
      1350 EAl99.5 3.0257 A91350
      3003 AlMn1Cu AlMnCu 3.0517 A93003 A3003
      3103 AlMn1 3.0515 A93103
      3004 AlMn1Mg1 A93004
      3005 AlMn1Mg0.5
      3105 A93105
      4043 AlSi5 A94043
      5005 AlMg1 3.3315 A95005 A5005 5005A
      5049 AlMg2Mn0.8 3.3527
      5050 A95050
      5052 AlMg2.5 3.3523 A95052 A5052
      5083 AlMg4.5Mn AlMg4.5Mn0.7 3.3547 A95083 A5083
      5086 AlMg4 3.3545 A95086
      5154 AlMg3.5 A95154 5154A
      5182 A95182
      5251 AlMg2 3.3525 AlMg2Mn0.3
      5454 AlMg2.7Mn 3.3537 A95454
      5456 A95456
      5754 AlMg3 3.3535 A95754
      5019 AlMg5 3.3555 A95056 5056 5056A
      8011 A98011
    `,
  },
  {
    // Age-hardening: soft and gummy as O or F, clean as T5 and T6.
    row: 'al-wrought',
    rule: 'temper',
    source: 'from-memory',
    grades: `
      6060 AlMgSi 3.3206 AlMgSi0.5 A96060
      6061 AlMg1SiCu 3.3211 A96061 A6061
      6063 AlMg0.7Si A96063 A6063
      6005A AlSiMg 3.3210 AlMgSi0.7 6005 A96005
      6012 AlMgSiPb 3.0615
      6026
      6082 AlSi1MgMn AlMgSi1 3.2315 A96082 HE30
      6101 A96101 6101A 6101B
      6262 A96262 6262A
      6351 A96351
      6463
      7020 AlZn4.5Mg1 3.4335 A97020
      7005 A97005
    `,
  },
  {
    row: 'al-high-strength',
    rule: 'temper',
    source: 'from-memory',
    grades: `
      2007 AlCuMgPb AlCu4PbMgMn 3.1645
      2011 AlCuBiPb AlCu6BiPb 3.1655 A92011 A2011
      2014 AlCuSiMn AlCu4SiMg 3.1255 A92014 A2014 2014A
      2017 AlCuMg1 AlCu4MgSi 3.1325 A92017 A2017 2017A
      2024 AlCuMg2 AlCu4Mg1 3.1355 3.1354 A92024 A2024
      2030 AlCu4PbMg
      2219 A92219
      2618 A92618 2618A 3.1924
      7010
      7022 AlZnMgCu0.5 AlZn5Mg3Cu 3.4345
      7049 A97049 7049A
      7050 A97050 3.4144
      7068
      7075 AlZnMgCu1.5 AlZn5.5MgCu 3.4365 3.4364 A97075 A7075
      7175 A97175
      7475 A97475 3.4384
    `,
  },
  {
    row: 'al-cast',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      EN-AC-42000 AC-42000 AlSi7Mg G-AlSi7Mg LM25 3.2371
      EN-AC-42100 AC-42100 AlSi7Mg0.3 A356 A13560 A356.0
      EN-AC-42200 AC-42200 AlSi7Mg0.6 357 A357 A13570
      EN-AC-43000 AC-43000 AlSi10Mg 3.2381 G-AlSi10Mg LM9
      EN-AC-43400 AC-43400 AlSi10MgFe GD-AlSi10Mg A360 A13600 3.2382
      EN-AC-43500 AC-43500 AlSi10MnMg
      EN-AC-45000 AC-45000 AlSi6Cu4 G-AlSi6Cu4 3.2151 LM21 319 A03190
      EN-AC-45200 AC-45200 AlSi5Cu3Mn LM4
      EN-AC-46200 AC-46200 AlSi8Cu3
      EN-AC-46000 AC-46000 AlSi9Cu3 AlSi9Cu3Fe GD-AlSi9Cu3 3.2163 LM24 A380 A13800 ADC10
      EN-AC-51000 AC-51000 G-AlMg3 LM5 EN-AC-51100
      EN-AC-51200 AC-51200 AlMg9 GD-AlMg9 3.3292
      EN-AC-21000 AC-21000 AlCu4MgTi 204 A02040
      EN-AC-71000 AC-71000 AlZn5Mg
      355 C355 A33550
      206 A206
      535 A05350
      713 A07130
    `,
  },
  {
    row: 'al-cast-high-si',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      EN-AC-44100 AC-44100 AlSi12 EN-AC-44200 AC-44200 G-AlSi12 3.2581 LM6 A413 A14130
      EN-AC-44300 AC-44300 AlSi12Fe GD-AlSi12 3.2582 LM20
      EN-AC-46100 AC-46100 AlSi11Cu2 ADC12 383 A03830 LM2
      EN-AC-47000 AC-47000 AlSi12Cu G-AlSi12Cu 3.2583
      EN-AC-47100 AC-47100 AlSi12Cu1 GD-AlSi12Cu 3.2982
      EN-AC-48000 AC-48000 AlSi12CuNiMg LM13
      384 A03840
      390 A390 A13900 LM30 AlSi17Cu4Mg B390
      AW-4032 A94032
      AW-4047 A94047 AlSi12A
    `,
  },
  {
    row: 'magnesium',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      AZ91D AZ91 MgAl9Zn1 EN-MC21120 MC21120 3.5912 M11916 AZ91E M11914 AZ91HP
      AZ31 AZ31B MgAl3Zn1 3.5312 M11311 AZ31C
      AZ61 AZ61A MgAl6Zn 3.5612 M11610
      AZ80 AZ80A MgAl8Zn 3.5812 M11800
      AM50 AM50A EN-MC21220 M10500
      AM60 AM60B EN-MC21230 M10602
      ZK60 ZK60A M16600
      WE43 M18430
      WE54 M18410
      ZE41 ZE41A M16410
      EZ33 EZ33A M12330
    `,
  },
  {
    row: 'zinc',
    rule: 'fixed',
    source: 'from-memory',
    grades: `
      ZP3 ZP0400 ZnAl4 Z400 GD-ZnAl4 AG40A Z33520 Z33521 ZL0400
      ZP5 ZP0410 ZnAl4Cu1 Z410 GD-ZnAl4Cu1 AC41A Z35531 ZL0410
      ZP2 ZP0430 ZnAl4Cu3 Z430 AC43A Z35541
      ZP8 ZP0810 ZA8 Z35636
      ZP12 ZP1110 ZA12 Z35631
      ZP27 ZP2720 ZA27 Z35841
    `,
  },
];
