using Shaduf.Cli;

return await Commands.Root().Parse(args).InvokeAsync(new() { EnableDefaultExceptionHandler = false });
