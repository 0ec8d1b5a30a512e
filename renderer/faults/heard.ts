interface Failed {
  readonly kind?: string
  readonly detail?: string
}

/**
 * A worker whose faults are told like those of the page: what breaks in it, and what it says could not be answered
 * because of a fault.
 */
export function heard<Heard extends EventTarget>(worker: Heard): Heard {
  worker.addEventListener('error', (event) => { reportError(new Error((event as ErrorEvent).message)) })
  worker.addEventListener('message', (event) => {
    const { kind, detail } = ((event as MessageEvent<Failed | null>).data ?? {})
    if (detail !== undefined && /failed$/i.test(kind ?? '')) reportError(new Error(detail))
  })
  return worker
}
