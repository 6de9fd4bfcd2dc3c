--- Kettlemark in Neovim 0.7 and newer.
---
--- Put this folder on the runtime path and call, in init.lua:
---
---     require('kettlemark').setup { jar = '/path/to/kettlemark.jar' }
---
--- Scaling and the formula table are code actions (`vim.lsp.buf.code_action()`).
local M = {}

local OLDEST_JAVA = 17

local options = {
  java = 'java',
  jar = nil,
  jvm_arguments = { '-XX:+UseSerialGC', '-XX:TieredStopAtLevel=1', '-XX:CompileThresholdScaling=0.1', '-Xms24m', '-Xmx256m' },
  -- A whole command line in place of java, jvm_arguments and jar.
  cmd = nil,
  settings = {
    inlayHints = { grams = true, percent = true, otherScale = true },
    codeLens = { totals = true },
  },
  on_attach = nil,
}

--- Clients by root folder; one server answers for one library.
local clients = {}

local function tell(text, level)
  vim.notify('Kettlemark: ' .. text, level or vim.log.levels.INFO)
end

local function holds(folder, pattern)
  return #vim.fn.glob(folder .. '/' .. pattern, true, true) > 0
end

--- The folder of the library that a file belongs to: the nearest one under version control, else the
--- topmost that holds formulas without a break above the file.
function M.root(file)
  local folder = vim.fn.fnamemodify(file, ':p:h')
  local library, unbroken = folder, true
  local current, parent = folder, vim.fn.fnamemodify(folder, ':h')
  while true do
    if vim.fn.isdirectory(current .. '/.git') == 1 or vim.fn.filereadable(current .. '/.git') == 1 then
      return current
    end
    unbroken = unbroken and holds(vim.fn.escape(current, '[]*?'), '*.kettle')
    if unbroken then
      library = current
    end
    if parent == current then
      return library
    end
    current, parent = parent, vim.fn.fnamemodify(parent, ':h')
  end
end

--- What is wrong with a Java program, or nil when it will do.
function M.java_problem(java)
  if vim.fn.executable(java) == 0 then
    return 'needs Java ' .. OLDEST_JAVA .. ' or newer and found no program ' .. java
  end
  local text = vim.fn.system { java, '-version' }
  local first, second = text:match 'version "(%d+)%.?(%d*)'
  local version = tonumber(first == '1' and second or first)
  if not version then
    return 'found no working Java at ' .. java
  end
  if version < OLDEST_JAVA then
    return 'needs Java ' .. OLDEST_JAVA .. ' or newer and found Java ' .. version .. ' at ' .. java
  end
end

local function command_line()
  if options.cmd then
    return options.cmd
  end
  local problem = M.java_problem(options.java)
  if not problem and not (options.jar and vim.fn.filereadable(options.jar) == 1) then
    problem = 'found no server at ' .. tostring(options.jar) .. '; set "jar" in setup'
  end
  if problem then
    return nil, problem
  end
  local line = { options.java }
  vim.list_extend(line, options.jvm_arguments)
  return vim.list_extend(line, { '-jar', options.jar, 'serve' })
end

--- The command line of the server, for those who start it by `vim.lsp.config`.
function M.command(user)
  options = vim.tbl_deep_extend('force', options, user or {})
  local line, problem = command_line()
  if not line then
    error('Kettlemark ' .. problem, 0)
  end
  return line
end

local function request(client, method, params, handler)
  if vim.fn.has 'nvim-0.11' == 1 then
    client:request(method, params, handler)
  else
    client.request(method, params, handler)
  end
end

--- Calls a command of the server; a refusal is told, an answer is handed on.
local function execute(client, command, argument, use)
  local params = { command = command, arguments = { argument } }
  request(client, 'workspace/executeCommand', params, function(err, result)
    if err then
      tell(err.message, vim.log.levels.ERROR)
    elseif result then
      use(result)
    end
  end)
end

--- Opens Markdown in a window of its own that leaves no file behind.
local function show_page(markdown)
  vim.cmd 'botright new'
  local buffer = vim.api.nvim_get_current_buf()
  vim.api.nvim_buf_set_lines(buffer, 0, -1, false, vim.split(markdown, '\n'))
  vim.bo[buffer].buftype = 'nofile'
  vim.bo[buffer].bufhidden = 'wipe'
  vim.bo[buffer].swapfile = false
  vim.bo[buffer].modifiable = false
  vim.bo[buffer].filetype = 'markdown'
end

local function above_zero(text)
  local number = text:match '^%s*%d*%.?%d+%s*$' and tonumber(text)
  return number and number > 0 and number or nil
end

local function count(text)
  local number = above_zero(text)
  return number and number % 1 == 0 and number or nil
end

local function loss(text)
  local number = text:match '^%s*%d*%.?%d+%s*$' and tonumber(text)
  return number and number < 100 and number or nil
end

local function name(text)
  text = vim.trim(text)
  return text ~= '' and text or nil
end

--- What to ask for each kind of target: field, prompt, reader, and whether it may be left empty.
local TARGETS = {
  { kind = 'charge', label = 'charge', ask = { { 'grams', 'Charge in grams: ', above_zero } } },
  { kind = 'finished', label = 'finished weight', ask = { { 'grams', 'Finished weight in grams: ', above_zero } } },
  {
    kind = 'pieces',
    label = 'pieces',
    ask = {
      { 'pieces', 'Number of pieces: ', count },
      { 'pieceGrams', 'Weight of one piece in grams: ', above_zero },
      { 'lossPercent', 'Loss in percent (empty: as declared): ', loss, true },
    },
  },
  {
    kind = 'moulds',
    label = 'moulds',
    ask = { { 'count', 'Number of moulds: ', count }, { 'name', 'Mould (empty: the formula\'s own): ', name, true } },
  },
  {
    kind = 'frames',
    label = 'frames',
    ask = { { 'count', 'Number of frames: ', count }, { 'name', 'Frame (empty: the formula\'s own): ', name, true } },
  },
  { kind = 'bowl', label = 'bowl', ask = { { 'name', 'Bowl (empty: the formula\'s own): ', name, true } } },
  {
    kind = 'ingredient',
    label = 'ingredient in hand',
    ask = { { 'name', 'Ingredient: ', name }, { 'grams', 'Grams in hand: ', above_zero } },
  },
}

local function ask(questions, index, target, done)
  local question = questions[index]
  if not question then
    return done(target)
  end
  local field, prompt, read, optional = unpack(question)
  vim.ui.input({ prompt = prompt }, function(text)
    if not text then
      return
    end
    if not (optional and vim.trim(text) == '') then
      target[field] = read(text)
      if target[field] == nil then
        return tell('"' .. text .. '" will not do here', vim.log.levels.WARN)
      end
    end
    ask(questions, index + 1, target, done)
  end)
end

local function label(choice)
  return choice.label
end

local function confirm(client, place, answer)
  local buffer = vim.uri_to_bufnr(place.uri)
  local before = vim.api.nvim_buf_get_changedtick(buffer)
  show_page(answer.weighingList)
  local choices = { { label = 'write into the text', write = true }, { label = 'leave the text as it is' } }
  vim.ui.select(choices, { prompt = answer.title, format_item = label }, function(choice)
    if not (choice and choice.write) then
      return
    end
    if vim.api.nvim_buf_get_changedtick(buffer) ~= before then
      return tell('the text has changed meanwhile; scale again', vim.log.levels.WARN)
    end
    vim.lsp.util.apply_workspace_edit(answer.edit, client.offset_encoding)
  end)
end

local function ask_scale(command, context)
  local client = vim.lsp.get_client_by_id(context.client_id)
  local place = command.arguments[1]
  vim.ui.select(TARGETS, { prompt = 'Scale formula to', format_item = label }, function(choice)
    if not choice then
      return
    end
    ask(choice.ask, 1, { kind = choice.kind }, function(target)
      local argument = { uri = place.uri, formula = place.formula, target = target }
      execute(client, 'kettlemark.scale', argument, function(answer)
        confirm(client, place, answer)
      end)
    end)
  end)
end

local function open_show(command, context)
  execute(vim.lsp.get_client_by_id(context.client_id), 'kettlemark.show', command.arguments[1], show_page)
end

local function open_what_if(command, context)
  execute(vim.lsp.get_client_by_id(context.client_id), 'kettlemark.whatIf', command.arguments[1], show_page)
end

local function open_compare(command, context)
  execute(vim.lsp.get_client_by_id(context.client_id), 'kettlemark.compare', command.arguments[1], show_page)
end

-- What the server's actions for scaling, the table, what-if pages and comparisons are answered with.
vim.lsp.commands['kettlemark.scale.ask'] = ask_scale
vim.lsp.commands['kettlemark.show.open'] = open_show
vim.lsp.commands['kettlemark.whatIf.open'] = open_what_if
vim.lsp.commands['kettlemark.compare.open'] = open_compare

local attach

--- A text without a name has no address that the server could speak of.
local function attach_once_saved(buffer)
  -- Neovim 0.7 tells a buffer's own commands nothing of the write that names it.
  vim.api.nvim_create_autocmd('BufWritePost', {
    callback = function(event)
      if event.buf == buffer then
        attach(buffer)
        return true
      end
    end,
  })
  tell 'the text is checked once it is saved'
end

attach = function(buffer)
  local file = vim.api.nvim_buf_get_name(buffer)
  if file == '' then
    return attach_once_saved(buffer)
  end
  local root = M.root(file)
  local id = clients[root]
  if not id or not vim.lsp.get_client_by_id(id) then
    local cmd, problem = command_line()
    if not cmd then
      return tell(problem, vim.log.levels.ERROR)
    end
    id = vim.lsp.start_client {
      name = 'kettlemark',
      cmd = cmd,
      root_dir = root,
      -- The server offers commands of a client only to one that names them.
      init_options = vim.tbl_extend('force', options.settings, {
        commands = {
          'kettlemark.scale.ask',
          'kettlemark.show.open',
          'kettlemark.whatIf.open',
          'kettlemark.compare.open',
        },
      }),
      settings = { kettlemark = options.settings },
      on_attach = options.on_attach,
    }
    clients[root] = id
  end
  if id then
    vim.lsp.buf_attach_client(buffer, id)
  end
end

--- Shows what the unsaved texts of the library would change, and in which formulas.
function M.changes()
  local buffer = vim.api.nvim_get_current_buf()
  for _, id in pairs(clients) do
    local client = vim.lsp.get_client_by_id(id)
    if client and vim.lsp.buf_is_attached(buffer, id) then
      return execute(client, 'kettlemark.changes', { uri = vim.uri_from_bufnr(buffer) }, show_page)
    end
  end
  tell('no server reads this text', vim.log.levels.WARN)
end

--- Starts the server for every Kettlemark text that is open or will be.
function M.setup(user)
  options = vim.tbl_deep_extend('force', options, user or {})
  local group = vim.api.nvim_create_augroup('kettlemark', { clear = true })
  vim.api.nvim_create_autocmd('FileType', {
    group = group,
    pattern = 'kettlemark',
    callback = function(event)
      attach(event.buf)
    end,
  })
  for _, buffer in ipairs(vim.api.nvim_list_bufs()) do
    if vim.api.nvim_buf_is_loaded(buffer) and vim.bo[buffer].filetype == 'kettlemark' then
      attach(buffer)
    end
  end
end

return M
