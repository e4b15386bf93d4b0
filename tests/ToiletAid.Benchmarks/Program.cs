using System.Reflection;
using BenchmarkDotNet.Running;
using ToiletAid.Benchmarks;

if (args is ["rerank", var folder])
{
    RerankPercentiles.Run(folder);
    return;
}

BenchmarkSwitcher.FromAssembly(Assembly.GetExecutingAssembly()).Run(args);
