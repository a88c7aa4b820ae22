-- A second client, which knows nothing of the first: the one that is built into Neovim, set up as docs/language-server.md says. The folder in
-- which this runs has a.wiring, with a slip in its third line. Says what it was told, and ends with an exit code.
local function wait(what, ready)
  if not vim.wait(60000, ready, 20) then
    print('waited in vain for ' .. what)
    vim.cmd('cquit 1')
  end
end

local function ask(method, line, character)
  local parameters = {
    textDocument = vim.lsp.util.make_text_document_params(),
    position = { line = line, character = character },
  }
  local answers = vim.lsp.buf_request_sync(0, method, parameters, 60000)
  local _, answer = next(answers or {})
  return answer and answer.result
end

vim.cmd('edit a.wiring')
local id = next(vim.lsp.buf_get_clients(0))

wait('what is found', function() return #vim.diagnostic.get(0) == 1 end)
local found = vim.diagnostic.get(0)[1]
print(('%d:%d %s'):format(found.lnum + 1, found.col + 1, found.message))

local labels = {}
for _, item in ipairs(ask('textDocument/completion', 2, 10)) do
  table.insert(labels, item.label)
end
print(table.concat(labels, ' '))

vim.api.nvim_buf_set_text(0, 2, 10, 2, 14, { 'hot' })
wait('the mended text', function() return #vim.diagnostic.get(0) == 0 end)
print(ask('textDocument/hover', 2, 11).contents.value)

vim.lsp.buf.formatting_sync(nil, 60000)
print(table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\n'))

vim.lsp.stop_client(id)
wait('the end', function() return vim.lsp.client_is_stopped(id) end)
vim.cmd('qall!')
