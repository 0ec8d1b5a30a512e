import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, expect, test } from 'vitest'
import type { DialogHandle } from '../../../../renderer/components/dialogHandle'
import DialogShell from '../../../../renderer/components/DialogShell.vue'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)

function shellOf(body: string | null) {
  const page = mount(DialogShell, { props: { title: 'Offcuts', body }, slots: { default: '<p class="told">Two of jute</p>' }, attachTo: document.body })
  return { page, handle: page.vm as unknown as DialogHandle, dialog: page.get('dialog').element as HTMLDialogElement }
}

test('is empty until it is opened, then named by its heading, and empty again once it is closed', async () => {
  const { page, handle, dialog } = shellOf('Offcuts in the box')
  expect(dialog.textContent).toBe('')
  await handle.open()
  expect(dialog.open).toBe(true)
  expect(page.get(`#${dialog.getAttribute('aria-labelledby') ?? ''}`).text()).toBe('Offcuts')
  expect(page.get('[role=group]').attributes()).toMatchObject({ 'aria-label': 'Offcuts in the box', tabindex: '0' })
  await page.get('button').trigger('click')
  expect(dialog.open).toBe(false)
  expect(page.emitted('closed')).toHaveLength(1)
  expect(page.find('.told').exists()).toBe(false)
})

test('a note has no part of its own to scroll, but a way to close it', async () => {
  const { page, handle, dialog } = shellOf(null)
  await handle.open()
  expect(page.find('[role=group]').exists()).toBe(false)
  await page.get('button').trigger('click')
  expect(dialog.open).toBe(false)
})

test('closed before it could be drawn, it stays closed', async () => {
  const { handle, dialog } = shellOf(null)
  const opening = handle.open()
  handle.close()
  await opening
  expect(dialog.open).toBe(false)
})

test('opened again before its closing was told of, it keeps what it shows', async () => {
  const { page, handle, dialog } = shellOf('Offcuts in the box')
  await handle.open()
  handle.close()
  await handle.open()
  dialog.dispatchEvent(new Event('close'))
  await page.vm.$nextTick()
  expect(dialog.open).toBe(true)
  expect(page.find('.told').exists()).toBe(true)
  page.unmount()
})
