using BenchmarkDotNet.Running;

// Lists the benches and runs those chosen: dotnet run -c Release --project bench/Shaduf.Bench -- --filter '*Colebrook*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
