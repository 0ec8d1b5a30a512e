import { createPinia } from 'pinia'
import { createApp } from 'vue'
import App from './App.vue'
import { useFaults } from './faults/faultsStore'
import { watchFaults } from './faults/watchFaults'
import { platform } from './platform/choose'
import { PLATFORM } from './stores/file'
import { useHabits } from './stores/habits'
import './styles/fonts.css'
import './styles/tokens.css'
import './styles/base.css'

const pinia = createPinia()
// Before anything is drawn, so that nothing changes under the eye.
useHabits(pinia).apply(document.documentElement)
const app = createApp(App).use(pinia).provide(PLATFORM, platform)
watchFaults(app, window, (fault, where) => useFaults(pinia).note(fault, where))
app.mount('#app')
