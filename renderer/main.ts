import { createPinia } from 'pinia'
import { createApp } from 'vue'
import App from './App.vue'
import { platform } from './platform/choose'
import { PLATFORM } from './stores/file'
import './styles/fonts.css'
import './styles/tokens.css'
import './styles/base.css'

createApp(App).use(createPinia()).provide(PLATFORM, platform).mount('#app')
