/** Signs and words of Japanese and Chinese callouts. JIS B 0001 habits, from memory. */

import type { Translation } from './translation';

export const EAST_ASIAN: readonly Translation[] = [
  ['インサート|ヘリサート', 'insert'],
  ['左ねじ|左ネジ|左旋|左', 'LH'],
  ['右ねじ|右ネジ|右旋', 'RH'],
  [
    '有効(?:ねじ|ネジ)(?:部)?(?:長さ|深さ)|(?:ねじ|ネジ)(?:部)?(?:長さ|深さ|深)|螺纹深度?',
    'thread depth',
  ],
  ['下穴(?:深さ|深)|(?:キリ|穴|孔)(?:深さ|深)度?', 'drill depth'],
  ['深(?:ザグリ|座ぐり|座グリ)|ザグリ|座ぐり|座グリ|沉孔', '⌴'],
  ['皿(?:もみ|モミ|ザグリ)?', '⌵'],
  ['下穴|底孔', 'tap drill'],
  ['キリ|きり|钻', 'drill'],
  ['通し|貫通|贯穿|通孔', 'thru'],
  ['止まり|盲孔', 'blind'],
  ['深さ|深度|深', '↧'],
  ['ねじ|ネジ|螺纹|タップ|攻丝', 'tap'],
  ['等配|均布', 'eq sp'],
  ['[箇ヶケヵカか个]所|[処处]', 'places'],
  ['細目|细牙', 'fine'],
  ['並目|粗牙', 'coarse'],
  ['メッキ|めっき|鍍金|镀锌|电镀', 'plated'],
  ['焼入れ?|焼き入れ|淬火', 'hardened'],
  ['アルマイト|阳极氧化', 'anodised'],
  ['溶接|焊接', 'welded'],
  ['(?<=\\d\\s?)(?:穴|孔)', 'holes'],
  ['穴|孔', 'hole'],
];
