export * from '@twelvemonth/workflows';
