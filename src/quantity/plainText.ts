/**
 * Full-width forms, spaces of all kinds, raised digits, dots and marks as one plain character each; a vulgar fraction
 * as ` 1/2`. Text that is plain already comes back as it is.
 */
export function plainText(text: string): string {
  let plain = ''
  let kept = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    // ASCII, degree, plus-minus, middle dot, en dash and the two bounds are plain already
    if ((code > 31 && code < 127) || code === 0xb0 || code === 0xb1 || code === 0xb7 || code === 0x2013)
      continue
    if (code === 0x2264 || code === 0x2265) continue
    plain += text.slice(kept, at) + plainSign(text.charAt(at))
    kept = at + 1
  }
  return kept === 0 ? text : plain + text.slice(kept)
}

const SAME: readonly (readonly [string, string])[] = [
  ['\t\n\r\u00a0\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000', ' '],
  ['•∙⋅・', '·'],
  ['−‐‑', '-'],
  ['—―', '–'],
  ['º˚', '°'],
  ['′’‘ʹ', "'"],
  ['″”“', '"'],
  ['⁄∕', '/'],
  ['²', '2'],
  ['³', '3'],
  ['\u200b\u2060\ufeff', ''],
]
const WRITTEN: { readonly [sign: string]: string } = {
  '½': ' 1/2',
  '¼': ' 1/4',
  '¾': ' 3/4',
  '⅓': ' 1/3',
  '⅔': ' 2/3',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
  '℃': '°C',
  '℉': '°F',
  '㏄': 'cc',
  '…': '–',
}

function plainSign(sign: string): string {
  const code = sign.charCodeAt(0)
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0)
  if (Object.hasOwn(WRITTEN, sign)) return WRITTEN[sign] ?? ''
  return SAME.find(([signs]) => signs.includes(sign))?.[1] ?? sign
}
