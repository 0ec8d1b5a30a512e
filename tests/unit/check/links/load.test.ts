import { describe, expect, test } from 'vitest'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, worstOfLink } from '../linkOf'

describe('what hangs', () => {
  test('is no link where everything is said', () => {
    expect(checkOf(ORDINARY).links.map((l) => l.link)).not.toContain('load')
  })

  test('without a pot is not known, nor is a hanger without one', () => {
    expect(codesOf(checkOf({ ...ORDINARY, 'pot.have': 'no' }), 'load')).toEqual(['NO_POT_YET'])
    expect(codesOf(checkOf({ ...ORDINARY, 'make.have': 'no' }), 'load')).toEqual(['NO_HANGER_YET'])
    expect(checkOf({ ...ORDINARY, 'pot.have': 'no' }).verdicts.hanger).toBe('not enough known')
  })

  test('is asked for with what was taken instead', () => {
    const { links, solved: { hanger } } = checkOf(without(ORDINARY, 'pot.rim', 'make.legs'))
    const asked = links.flatMap((l) => l.findings).flatMap((f) => (f.code === 'ANSWER_NEEDED' ? [f] : []))
    expect(asked.map(({ path }) => path)).toEqual(['pot.rim', 'make.legs'])
    for (const { path, assumed } of asked) expect(assumed).toBe(hanger.assumed.find((a) => a.path === path)?.text)
  })

  test('weighed lighter than the water that it should hold is not believed', () => {
    const light = checkOf({ ...ORDINARY, 'weighed.mass': '1.1 kg', 'weighed.state': 'flooded' })
    expect(worstOfLink(light, 'load').verdict).toBe('not enough known')
    expect(codesOf(light, 'load')).toEqual(['WEIGHED_TOO_LIGHT'])
  })

  test('is not known where a gust pushes harder than it weighs', () => {
    const outdoors = (wind: string) => checkOf({ ...ORDINARY, 'cord.fibre': 'polyester', 'cord.make': 'braided', 'place.exposure': 'outdoors', 'place.wind': wind })
    expect(outdoors('open').links.map((l) => l.link)).not.toContain('load')
    expect(codesOf(outdoors('exposed'), 'load')).toEqual(['WIND_THROWS'])
    expect(outdoors('exposed').verdicts.hanger).not.toMatch(/holds/)
  })
})

describe('what is beneath, where it was not said', () => {
  const unsaid = without(ORDINARY, 'place.beneath')

  test('is taken as people: nothing is better than if it were said', () => {
    const [assumed, people] = [checkOf(unsaid), checkOf({ ...ORDINARY, 'place.beneath': 'people' })]
    expect(assumed.solved.hanger.answers['place.beneath']).toBe('people')
    for (const link of people.links) expect(assumed.links.find((l) => l.id === link.id)?.utilisation).toBe(link.utilisation)
  })

  test('does not let fail what fails over people only', () => {
    const over = { ...unsaid, 'hook.kind': 'open', 'make.legs': '3' } as const
    expect(worstOfLink(checkOf({ ...over, 'place.beneath': 'people' }), 'hook').verdict).toBe('fails')
    const assumed = checkOf(over)
    expect(worstOfLink(assumed, 'hook').verdict).toBe('not enough known')
    expect(codesOf(assumed, 'hook')).toContain('ASSUMED_PART_FAILS')
  })

  test('lets fail what fails over nothing as well', () => {
    expect(worstOfLink(checkOf({ ...unsaid, 'weighed.mass': '90 kg' }), 'leg').verdict).toBe('fails')
    expect(worstOfLink(checkOf({ ...unsaid, 'place.substrate': 'plasterboard' }), 'fixing').verdict).toBe('fails')
  })
})

test('a second tie is advised over people, and only there', () => {
  expect(checkOf({ ...ORDINARY, 'place.beneath': 'people' }).cautions).toContain('secondTie')
  expect(checkOf(ORDINARY).cautions).not.toContain('secondTie')
  for (const caution of ['aidNotCertificate', 'testHang', 'notForPeople'] as const) expect(checkOf(ORDINARY).cautions).toContain(caution)
})
