import { homedir } from 'node:os'
import { join } from 'node:path'
import { app, ipcMain, Menu, protocol, session } from 'electron'
import { EVENTS, HANGER_EXTENSION } from '../contract'
import { createAnswerers, openPath } from './answerers'
import { answerRequests } from './answerRequests'
import { chooseFile, chooseFolder, chooseTarget } from './dialogs'
import { createDraftFile } from './files/draftFile'
import { createHangerFiles } from './files/hangerFiles'
import { createHangerFolder } from './files/hangerFolder'
import { createRecentFiles } from './files/recentFiles'
import { createShelfFile } from './files/shelfFile'
import { createInbox, hangerFilesIn } from './inbox'
import { createMainWindow } from './mainWindow'
import { menuTemplate } from './menu'
import { SCHEME } from './origin'
import { isOwnPage } from './ownPage'
import { pageSizeFor } from './pageSize'
import { printOn } from './printOn'
import { cutOff, lockDown } from './security'
import { servePages } from './servePages'

const stateFile = (name: string): string => join(app.getPath('userData'), name)

// Tests, and whoever carries the app on a stick, keep its memory elsewhere.
const memory = process.env['STRANDWISE_USER_DATA']
if (memory) app.setPath('userData', memory)

// Before the app is ready: Chromium reads these once, as it starts.
app.enableSandbox()
cutOff(app)
protocol.registerSchemesAsPrivileged([{ scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } }])

if (app.requestSingleInstanceLock()) run()
else app.quit()

function run(): void {
  const files = createHangerFiles()
  const recent = createRecentFiles(stateFile('recent.json'))
  const inbox = createInbox((path) => {
    void openPath({ files, recent }, path).then((outcome) => { main.tell(EVENTS.onOpened, outcome) })
  })
  const draft = createDraftFile(stateFile('draft.json'))
  const main = createMainWindow(stateFile('window.json'), (lost) => {
    inbox.close()
    // Whoever closed the window has saved, or gave up what was not.
    if (!lost) void draft.keep(null)
  })

  // A double click may be what starts the app: these two can come before it is ready.
  app.on('open-file', (event, path) => {
    event.preventDefault()
    inbox.give(path)
  })
  app.on('second-instance', (_event, args, cwd) => {
    hangerFilesIn(args, cwd).forEach(inbox.give)
    main.comeForward()
  })
  hangerFilesIn(process.argv, process.cwd()).forEach(inbox.give)

  app.on('before-quit', () => { if (main.isOpen()) main.closing().setQuitting() })
  app.on('window-all-closed', () => { if (process.platform !== 'darwin') app.quit() })

  void app.whenReady().then(() => {
    lockDown(app, session.defaultSession)
    protocol.handle(SCHEME, servePages(join(import.meta.dirname, '../renderer')))
    answerRequests(ipcMain, (asker) => isOwnPage(asker, main.contents()), createAnswerers({
      files,
      recent,
      shelf: createShelfFile(stateFile('shelf.json')),
      draft,
      folder: createHangerFolder(stateFile('folder.json'), files),
      inbox,
      home: homedir(),
      closing: main.closing,
      chooseHanger: () => chooseFile(main.window(), HANGER_EXTENSION),
      chooseFolder: () => chooseFolder(main.window()),
      chooseShelf: () => chooseFile(main.window(), 'json'),
      chooseTarget: (suggestedName, extension) => chooseTarget(main.window(), suggestedName, extension),
      printPage: () => main.window().webContents.printToPDF({
        pageSize: pageSizeFor(app.getLocaleCountryCode()),
        preferCSSPageSize: true,
        printBackground: true,
        generateTaggedPDF: true,
        generateDocumentOutline: true,
      }),
      printOnPaper: (paper) => printOn(main.window().webContents, paper),
    }))
    Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, !app.isPackaged, (command) => { main.tell(EVENTS.onMenu, command) })))
    main.open()
    app.on('activate', () => { if (!main.isOpen()) main.open() })
  })
}
