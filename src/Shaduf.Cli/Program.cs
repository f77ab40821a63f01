using Shaduf.Cli;

var parsed = Commands.Root().Parse(args);
var code = await parsed.InvokeAsync(new() { EnableDefaultExceptionHandler = false });

// A command line that cannot be understood is bad input, not our fault.
return parsed.Errors.Count > 0 ? ExitCode.BadInput : code;
