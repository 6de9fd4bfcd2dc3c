--- Works through a text in a real Neovim as a writer would; ends with status 1 at the first surprise.
local PATIENCE_MS = 15000

local function say(...)
  io.stdout:write(table.concat(vim.tbl_map(tostring, { ... }), ' ') .. '\n')
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

--- A program that calls itself Java of some version, as the real ones print it.
local function fake_java(version)
  local program = vim.fn.tempname()
  vim.fn.writefile({ '#!/bin/sh', 'echo "openjdk version \\"' .. version .. '\\" 2024-01-16" >&2' }, program)
  vim.fn.setfperm(program, 'rwx------')
  return program
end

local function check_java()
  local problem = require('kettlemark').java_problem
  assert(problem(fake_java '17.0.15') == nil)
  assert(problem(fake_java '25-ea') == nil)
  assert(problem(fake_java '1.8.0_392'):find 'found Java 8 at')
  assert(problem(fake_java '11.0.22'):find 'found Java 11 at')
  assert(problem(fake_java 'new'):find 'no working Java')
  assert(problem '/nowhere/java':find 'found no program /nowhere/java')
  say 'java'
end

local function check_colours()
  for _, case in ipairs {
    { '^formula', 'formula', 'kettlemarkSection' },
    { '^formula', 'bench', 'kettlemarkName' },
    { '^formula', '"Bench', 'kettlemarkText' },
    { '^  version', '2026', 'kettlemarkDate' },
    { '^  percent', 'percent', 'kettlemarkFact' },
    { '^  percent', 'of', 'kettlemarkConnective' },
    { 'almond%-flour$', '60', 'kettlemarkNumber' },
    { 'almond%-flour$', '%', 'kettlemarkUnit' },
    { 'q%.s%.', 'q.s.', 'kettlemarkAmount' },
    { '^  mix', 'mix', 'kettlemarkVerb' },
    { '^  cut', 'mm', 'kettlemarkUnit' },
  } do
    local pattern, word, expected = unpack(case)
    local actual = colour(pattern, word)
    assert(actual == expected, word .. ' is ' .. actual .. ', not ' .. expected)
  end
  say 'colours'
end

local function check_finding()
  await('a finding', function()
    return #findings(vim.diagnostic.severity.ERROR) > 0
  end)
  local finding = findings(vim.diagnostic.severity.ERROR)[1]
  assert(finding.lnum + 1 == find_line '^  batch', 'finding on line ' .. finding.lnum + 1)
  say('finding', finding.message)
end

local function check_hover()
  place_cursor('^  60%.00 %%', 'almond-flour')
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
  assert(text:lower():find 'almond', 'hover says ' .. text)
  say 'hover'
end

local function check_fix()
  place_cursor('^  batch', '1,200')
  answer({ '1200 g' }, {})
  vim.lsp.buf.code_action()
  await('the fix', function()
    return line(find_line '^  batch'):find '1200 g'
  end)
  await('no more errors', function()
    return #findings(vim.diagnostic.severity.ERROR) == 0
  end)
  say 'fix'
end

local function check_scale()
  local text = vim.api.nvim_get_current_win()
  place_cursor('^formula', 'bench-paste')
  answer({ 'Scale bench-paste', 'charge', 'write' }, { '3000' })
  vim.lsp.buf.code_action()
  await('the weighing list', function()
    return vim.bo.filetype == 'markdown'
  end)
  local list = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\n')
  assert(list:find '3000', 'weighing list says ' .. list)
  vim.cmd 'close'
  vim.api.nvim_set_current_win(text)
  assert(line(find_line '^  batch'):find '3000 g', line(find_line '^  batch'))
  say 'scale'
end

local function check_rename()
  place_cursor('^stage paste', 'paste')
  vim.lsp.buf.rename 'almond-mass'
  await('the rename', function()
    return line(find_line '^stage'):find 'almond%-mass' and line(find_line '^  spread'):find 'almond%-mass'
  end)
  say 'rename'
end

local function check_format()
  if vim.lsp.buf.format then
    vim.lsp.buf.format { timeout_ms = PATIENCE_MS }
  else
    vim.lsp.buf.formatting_sync({}, PATIENCE_MS)
  end
  assert(not line(find_line '^  mix'):find '%s$', 'spaces stay at the end of a line')
  say 'format'
end

local function check_end(client)
  vim.cmd 'silent write'
  client.stop()
  await('the end of the server', function()
    return client.is_stopped()
  end)
  say 'end'
end

local function check_all()
  check_java()
  require('kettlemark').setup { jar = os.getenv 'KETTLE_JAR' }
  vim.cmd('edit ' .. vim.fn.fnameescape(os.getenv 'KETTLE_FILE'))
  assert(vim.bo.filetype == 'kettlemark', 'filetype ' .. vim.bo.filetype)
  vim.cmd 'syntax on'
  check_colours()
  check_finding()
  local client = vim.lsp.get_client_by_id(next(vim.lsp.buf_get_clients(0)))
  assert(client.config.root_dir == vim.fn.fnamemodify(os.getenv 'KETTLE_FILE', ':h'), client.config.root_dir)
  check_hover()
  check_fix()
  check_scale()
  check_rename()
  check_format()
  check_end(client)
end

local ok, problem = xpcall(check_all, debug.traceback)
if not ok then
  say('FAILED', problem)
  vim.cmd 'cquit 1'
end
vim.cmd 'qall!'
