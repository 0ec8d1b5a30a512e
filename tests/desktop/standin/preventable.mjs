/** Emits an event a listener may prevent, with what is told about it; answers whether none did. */
export function emitPreventable(target, name, details = {}) {
  let prevented = false
  target.emit(name, { ...details, preventDefault: () => { prevented = true } })
  return !prevented
}
