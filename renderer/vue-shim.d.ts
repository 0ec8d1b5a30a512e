// What a component file is to a linter that cannot read it; vue-tsc reads the file itself instead.
declare module '*.vue' {
  import type { DefineComponent } from 'vue'

  const component: DefineComponent
  export default component
}
