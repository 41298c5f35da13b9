int result = PackageConsumer.Rim.Calculate();
result = result == 0 ? PackageConsumer.Rim.ReadPlanAndWrite() : result;
#if WHOLE
result = result == 0 ? PackageConsumer.Drawer.KeepAndDraw() : result;
#endif
return result;
