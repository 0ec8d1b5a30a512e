class MenuItem {
  constructor(options) {
    Object.assign(this, options)
    this.submenu = options.submenu ? Menu.buildFromTemplate(options.submenu) : undefined
    this.click = () => options.click?.(this)
  }
}

export class Menu {
  static #ofApp = null

  static buildFromTemplate(template) {
    const menu = new Menu()
    menu.items = template.map((options) => new MenuItem(options))
    return menu
  }

  static setApplicationMenu(menu) { Menu.#ofApp = menu }

  static getApplicationMenu() { return Menu.#ofApp }

  getMenuItemById(id) {
    for (const item of this.items) {
      const found = item.id === id ? item : item.submenu?.getMenuItemById(id)
      if (found) return found
    }
    return null
  }
}
