--- Works through a text in a real Neovim as a writer would; ends with status 1 at the first surprise.
local PATIENCE_MS = 15000

local LEMON = os.getenv 'LIBRARY' .. '/lemon.kettle'
local SECOND = os.getenv 'LIBRARY' .. '/second.kettle'

local function say(...)
  io.stdout:write(table.concat(vim.tbl_map(tostring, { ... }), ' ') .. '\n')
end

--- Takes note of a feature that was seen to work.
local function verified(feature)
  say(feature)
  local results = assert(io.open(os.getenv 'RESULTS', 'a'))
  results:write(feature .. ': ok\n')
  results:close()
end

local function await(what, condition)
  assert(vim.wait(PATIENCE_MS, condition, 10), 'waited in vain for ' .. what)
end

local function line(number)
  return vim.api.nvim_buf_get_lines(0, number - 1, number, false)[1]
end

local function find_line(pattern)
  for number, text in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
    if text:find(pattern) then
      return number
    end
  end
  error('no line with ' .. pattern)
end

local function place_cursor(pattern, word)
  local number = find_line(pattern)
  vim.api.nvim_win_set_cursor(0, { number, line(number):find(word, 1, true) - 1 })
end

local function findings(severity)
  return vim.diagnostic.get(0, { severity = severity })
end

--- Makes the editor's questions answer themselves: a selection by a text in its label, an input by turn.
local function answer(selections, inputs)
  vim.ui.select = function(items, opts, chosen)
    local wanted = table.remove(selections, 1)
    local format = opts.format_item or tostring
    for index, item in ipairs(items) do
      if format(item):find(wanted, 1, true) then
        return chosen(item, index)
      end
    end
    error('no choice with ' .. tostring(wanted) .. ' for ' .. tostring(opts.prompt))
  end
  vim.ui.input = function(_, entered)
    entered(table.remove(inputs, 1))
  end
end

local function colour(pattern, word)
  place_cursor(pattern, word)
  local row, column = unpack(vim.api.nvim_win_get_cursor(0))
  return vim.fn.synIDattr(vim.fn.synID(row, column + 1, 1), 'name')
end

local function open(file)
  vim.cmd('edit ' .. vim.fn.fnameescape(file))
  assert(vim.bo.filetype == 'kettlemark', 'filetype ' .. vim.bo.filetype)
end

local function client_here()
  return vim.lsp.get_client_by_id(next(vim.lsp.buf_get_clients(0)))
end

local function request(method, params)
  local client = client_here()
  local answers = vim.lsp.buf_request_sync(0, method, params, PATIENCE_MS)
  local answer = assert(answers and answers[client.id], method .. ' has no answer')
  assert(not (answer.err or answer.error), method .. ': ' .. vim.inspect(answer))
  return answer.result
end

local function here()
  return vim.lsp.util.make_position_params(0, client_here().offset_encoding)
end

local function check_java()
  local problem = require('kettlemark').java_problem
  local fakes = os.getenv 'FAKES'
  assert(problem(fakes .. '/java17') == nil)
  assert(problem(fakes .. '/java25') == nil)
  assert(problem(fakes .. '/javanew'):find 'no working Java')
  assert(problem(fakes .. '/java8'):find 'found Java 8 at')
  assert(problem(fakes .. '/java11'):find 'found Java 11 at')
  verified 'old Java is named'
  assert(problem '/nowhere/java':find 'found no program /nowhere/java')
  verified 'no Java is named'
end

local function check_colours()
  for _, case in ipairs {
    { '^formula', 'formula', 'kettlemarkSection' },
    { '^formula', 'lemon', 'kettlemarkName' },
    { '^formula', '"Lemon', 'kettlemarkText' },
    { '^  version', '2026', 'kettlemarkDate' },
    { '^  percent', 'percent', 'kettlemarkFact' },
    { '^  percent', 'of', 'kettlemarkConnective' },
    { 'white%-sugar$', '60', 'kettlemarkNumber' },
    { 'white%-sugar$', '%', 'kettlemarkUnit' },
    { '^  all of', 'all', 'kettlemarkAmount' },
    { '^  mix', 'mix', 'kettlemarkVerb' },
    { '^  cook', '°C', 'kettlemarkUnit' },
    { '^  boil', 'dissolved', 'kettlemarkState' },
  } do
    local pattern, word, expected = unpack(case)
    local actual = colour(pattern, word)
    assert(actual == expected, word .. ' is ' .. actual .. ', not ' .. expected)
  end
  verified 'colours'
end

local function check_finding()
  await('a finding', function()
    return #findings(vim.diagnostic.severity.ERROR) > 0
  end)
  local finding = findings(vim.diagnostic.severity.ERROR)[1]
  assert(finding.message:find 'sugar burns at 248 °C', finding.message)
  assert(finding.lnum + 1 == find_line '^  cook', 'finding on line ' .. finding.lnum + 1)
end

local function check_hover()
  place_cursor('white%-sugar$', 'white-sugar')
  vim.lsp.buf.hover()
  local text
  await('a hover', function()
    for _, window in ipairs(vim.api.nvim_list_wins()) do
      if vim.api.nvim_win_get_config(window).relative ~= '' then
        text = table.concat(vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, false), '\n')
        vim.api.nvim_win_close(window, true)
        return true
      end
    end
  end)
  -- By hand: 60 % of 1200 g.
  assert(text:find '720', 'hover says ' .. text)
  verified 'hover'
end

local function check_answers()
  place_cursor('white%-sugar$', 'white-sugar')
  local offers = request('textDocument/completion', here())
  assert(#(offers.items or offers) > 0, 'nothing is offered')
  verified 'completion'
  place_cursor('^  all of', 'syrup')
  local places = request('textDocument/definition', here())
  local range = places[1].range or places[1].targetSelectionRange
  assert(range.start.line + 1 == find_line '^stage syrup', vim.inspect(places))
  verified 'definition'
  local params = here()
  params.context = { includeDeclaration = true }
  assert(#request('textDocument/references', params) >= 3, 'too few uses')
  verified 'references'
  local symbols = request('textDocument/documentSymbol', { textDocument = here().textDocument })
  assert(symbols[1].name:find 'lemon%-chews', vim.inspect(symbols[1]))
  verified 'outline'
end

local function check_fix()
  place_cursor('^  cook', '248')
  answer({ 'Write 120 °C' }, {})
  vim.lsp.buf.code_action()
  await('the fix', function()
    return line(find_line '^  cook'):find '120 °C'
  end)
  await('no more errors', function()
    return #findings(vim.diagnostic.severity.ERROR) == 0
  end)
  verified 'fix'
end

local function check_scale()
  local text = vim.api.nvim_get_current_win()
  place_cursor('^formula', 'lemon-chews')
  answer({ 'Scale lemon-chews …', 'charge', 'write' }, { '2400' })
  vim.lsp.buf.code_action()
  await('the weighing list', function()
    return vim.bo.filetype == 'markdown'
  end)
  local list = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\n')
  assert(list:find '2400', 'weighing list says ' .. list)
  vim.cmd 'close'
  vim.api.nvim_set_current_win(text)
  assert(line(find_line '^  batch'):find '2400 g', line(find_line '^  batch'))
  verified 'scaling'
  place_cursor('^formula', 'lemon-chews')
  answer({ 'Show lemon-chews as a table' }, {})
  vim.lsp.buf.code_action()
  await('the table', function()
    return vim.bo.filetype == 'markdown'
  end)
  vim.cmd 'close'
  vim.api.nvim_set_current_win(text)
  verified 'table'
end

local function check_rename()
  place_cursor('rook%-zest$', 'rook-zest')
  vim.lsp.buf.rename 'rook-peel'
  await('the rename', function()
    return line(find_line '^  mix'):find 'rook%-peel'
  end)
  verified 'renaming across files'
end

local function check_format()
  if vim.lsp.buf.format then
    vim.lsp.buf.format { timeout_ms = PATIENCE_MS }
  else
    vim.lsp.buf.formatting_sync({}, PATIENCE_MS)
  end
  assert(line(find_line '^  mix') == '  mix       rook-peel, syrup', line(find_line '^  mix'))
  verified 'formatting'
end

local function check_end(client)
  vim.cmd 'silent wall'
  client.stop()
  await('the end of the server', function()
    return client.is_stopped()
  end)
  verified 'the server ends with the editor'
end

-- A second editor on the same file would be asked about the first one's swap file.
vim.o.swapfile = false

local stories = {}

function stories.whole()
  check_java()
  require('kettlemark').setup { jar = os.getenv 'JAR' }
  open(LEMON)
  vim.cmd 'syntax on'
  check_colours()
  check_finding()
  verified 'findings'
  local client = client_here()
  assert(client.config.root_dir == os.getenv 'LIBRARY', client.config.root_dir)
  check_hover()
  check_answers()
  check_fix()
  check_scale()
  check_rename()
  check_format()
  check_end(client)
end

--- What Neovim 0.11 would read, as far as an older one can tell.
local function check_config()
  local config = dofile(vim.api.nvim_get_runtime_file('lsp/kettlemark.lua', false)[1])
  assert(config.filetypes[1] == 'kettlemark')
  local root
  config.root_dir(0, function(folder)
    root = folder
  end)
  assert(root == os.getenv 'LIBRARY', tostring(root))
  local line = require('kettlemark').command { jar = os.getenv 'JAR' }
  assert(line[#line] == 'serve', vim.inspect(line))
  assert(not pcall(require('kettlemark').command, { jar = '/nowhere.jar' }))
end

function stories.awkward()
  require('kettlemark').setup { jar = os.getenv 'JAR' }
  open(LEMON)
  check_config()
  require('kettlemark').setup { jar = os.getenv 'JAR' }
  vim.cmd 'enew'
  vim.api.nvim_buf_set_lines(0, 0, -1, false, vim.fn.readfile(LEMON))
  vim.bo.filetype = 'kettlemark'
  vim.fn.mkdir(os.getenv 'WORK' .. '/new')
  vim.cmd('silent write ' .. vim.fn.fnameescape(os.getenv 'WORK' .. '/new/new.kettle'))
  check_finding()
  verified 'new text, once it is saved'
  vim.fn.mkdir(os.getenv 'WORK' .. '/alone')
  local alone = os.getenv 'WORK' .. '/alone/one.kettle'
  vim.fn.writefile(vim.fn.readfile(LEMON), alone)
  open(alone)
  check_finding()
  verified 'a file of its own'
end

--- Another client on the same library mends the text; this one reads it from the disk again.
function stories.two()
  require('kettlemark').setup { jar = os.getenv 'JAR' }
  vim.o.autoread = true
  open(LEMON)
  check_finding()
  local other = vim.fn.jobstart({
    os.getenv 'NVIM', '--clean', '--headless',
    '--cmd', 'set runtimepath^=' .. vim.fn.escape(os.getenv 'HERE', ' \\,') .. '/../../neovim',
    '-c', 'luafile ' .. os.getenv 'HERE' .. '/check.lua',
  }, { env = { STORY = 'other' } })
  assert(vim.fn.jobwait({ other }, PATIENCE_MS)[1] == 0, 'the other client failed')
  vim.cmd 'checktime'
  await('the text of the other client', function()
    return line(find_line '^  cook'):find '120 °C'
  end)
  await('no more errors', function()
    return #findings(vim.diagnostic.severity.ERROR) == 0
  end)
  verified 'two windows on one library'
end

function stories.other()
  require('kettlemark').setup { jar = os.getenv 'JAR' }
  open(LEMON)
  check_finding()
  place_cursor('^  cook', '248')
  answer({ 'Write 120 °C' }, {})
  vim.lsp.buf.code_action()
  await('the fix', function()
    return line(find_line '^  cook'):find '120 °C'
  end)
  vim.cmd 'silent write'
end

function stories.readonly()
  require('kettlemark').setup { jar = os.getenv 'JAR' }
  open(SECOND)
  place_cursor('white%-sugar$', 'white-sugar')
  await('the server', function()
    return next(vim.lsp.buf_get_clients(0)) ~= nil and client_here().initialized
  end)
  local hover = request('textDocument/hover', here())
  -- By hand: 65 % of 800 g.
  assert(vim.inspect(hover):find '520', vim.inspect(hover))
  assert(not pcall(vim.cmd, 'silent write'), 'the folder can be written after all')
end

local ok, problem = xpcall(stories[os.getenv 'STORY'], debug.traceback)
if not ok then
  say('FAILED', problem)
  vim.cmd 'cquit 1'
end
vim.cmd 'qall!'
