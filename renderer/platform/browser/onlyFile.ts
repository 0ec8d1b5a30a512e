/**
 * The one file that was dropped.
 * @throws if there is none, or more than one
 */
export function onlyFile({ files }: Pick<DataTransfer, 'files'>): File {
  const [file] = files
  if (file === undefined || files.length > 1) throw new Error('Not one file was dropped')
  return file
}
