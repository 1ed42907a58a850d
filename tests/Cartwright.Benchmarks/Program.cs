using BenchmarkDotNet.Running;

// dotnet run -c Release --project tests/Cartwright.Benchmarks -- --filter '*WordSwap*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
