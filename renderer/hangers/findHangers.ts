import { sameTag } from '#core'
import type { FolderFile } from '../../electron/contract'
import type { HangerCard } from './hangerCard'

const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()

/**
 * The files in whose name, tag code or lot every word of the query stands, large and small letters and accents taken alike.
 * What was not checked yet is found by its file's name.
 */
export function findHangers(files: readonly FolderFile[], query: string, cardOf: (file: FolderFile) => HangerCard | null): readonly FolderFile[] {
  const words = plain(query).split(/\s+/).filter((word) => word !== '')
  if (words.length === 0) return files
  return files.filter((file) => {
    const card = cardOf(file)
    const text = plain([file.name, card?.name, card?.code, card?.lot].join(' '))
    // A tag is read aloud and typed anew: with other spaces and dashes it is the same.
    return words.every((word) => text.includes(word)) || sameTag(card?.code ?? '', query)
  })
}
