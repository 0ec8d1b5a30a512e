import { texts } from '../texts'

/** Longest name offered, in bytes of UTF-8: usual disks allow 255, ending and backup sign included. */
const BYTES_LIMIT = 180

/** Names Windows keeps for devices, whatever their ending. */
const DEVICES = /^(con|conin\$|conout\$|prn|aux|nul|com[\d¹²³]|lpt[\d¹²³])$/i

const bytesOf = (text: string): number => new TextEncoder().encode(text).length

function shorten(text: string): string {
  const characters = [...text]
  while (bytesOf(characters.join('')) > BYTES_LIMIT) characters.pop()
  return characters.join('')
}

/**
 * A file name to offer for what the page calls its hanger: fit for every usual disk, never a path,
 * never hidden, never empty.
 *
 * @example fileName('Fern / kitchen', 'pdf') // 'Fern kitchen.pdf'
 */
export function fileName(suggested: string, extension: string): string {
  const tidy = suggested
    .replace(/[\p{Cc}\p{Cf}\p{Cs}<>:"/\\|?*]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s.~]+/, '')
  const stem = shorten(tidy).replace(/[\s.]+$/, '')
  if (stem === '') return `${texts.fileStem}.${extension}`
  return `${DEVICES.test(stem.split('.')[0] ?? '') ? `${texts.fileStem} ` : ''}${stem}.${extension}`
}
